package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.RailPiece;

/**
 * How far an 8 ft rail reaches on a 20 % grade: 94.1 in. of run, not 96; and how a rail's long point grows with its depth.
 *
 * Source: plane geometry, 96 / sqrt(1 + 0.2^2) = 94.135; common practice, no source, that the longest bay counts along the slope.
 * Tolerance: the printed digit, 0.05 in.; 1e-6 in. on the closed form.
 */
class SlopeBayCheck {
    /** 23 bays of 94.1 in. reach 2164.3 in., 23 of 96 would reach 2208: a leg of 2180 takes 24. */
    @Test
    void theLongestBayCountsAlongTheSlope() {
        LaidOut steep = LaidOut.run("{ \"length\": \"2180\\\"\" }", "", 0, 0, 10, 24);
        assertThat(steep.layout().bays()).hasSize(24);
        LaidOut level = LaidOut.run("{ \"length\": \"2180\\\"\" }", "", 0, 0, 10, 0);
        assertThat(level.layout().bays()).hasSize(23);
        double reach = 96 / Math.sqrt(1.04);
        assertThat(reach).isCloseTo(94.1, within(0.05));
        LaidOut just = LaidOut.run("{ \"length\": \"188.27\\\"\" }", "", 0, 0, 10, 24);
        assertThat(just.layout().bays()).hasSize(2);
        assertThat(just.layout().bays().get(0).slopeLength().inches()).isLessThanOrEqualTo(96);
        LaidOut over = LaidOut.run("{ \"length\": \"188.28\\\"\" }", "", 0, 0, 10, 24);
        assertThat(over.layout().bays()).hasSize(3);
    }

    @Test
    void plumbEndsAddDepthTimesGradeToTheLongPoint() {
        LaidOut laid = LaidOut.run("{ \"length\": \"15'\" }", "", 0, 0, 10, 24);
        Bay bay = laid.layout().bays().get(0);
        RailPiece rail = bay.rails().get(0);
        assertThat(rail.cut().inches()).isCloseTo(90 * Math.sqrt(1.04), within(1e-6));
        assertThat(rail.longPoint().inches()).isCloseTo(90 * Math.sqrt(1.04) + 3.5 * 0.2, within(1e-6));
        assertThat(rail.endsFromSquare().get(0).inDegrees()).isCloseTo(11.31, within(0.005));
    }

    /** A bay as long as stock reaches leaves nothing for a bevel: its rails stay square. */
    @Test
    void railsAsLongAsTheirStockStaySquare() {
        LaidOut laid = LaidOut.run("{ \"length\": \"188.2\\\"\" }", "", 0, 0, 10, 24);
        RailPiece rail = laid.layout().bays().get(0).rails().get(0);
        assertThat(rail.endsFromSquare().get(0).isZero()).isTrue();
        assertThat(rail.longPoint()).isEqualTo(rail.cut());
    }
}
