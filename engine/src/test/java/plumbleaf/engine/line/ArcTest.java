package plumbleaf.engine.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Arc;
import plumbleaf.engine.job.Heading;
import plumbleaf.engine.job.Leg;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

class ArcTest {
    /** A quarter circle of 20 ft to the left from the origin eastwards: every post on the circle about (0, 20 ft), the last one at (20, 20) ft, heading north. */
    @Test
    void thePostsOfACurveStandOnItsCircle() {
        Arc arc = new Arc(Length.feet(20), Angle.degrees(90), Length.inches(3));
        List<Leg> legs = arc.legs(new Heading.Bearing(Angle.degrees(90)), Length.feet(8));
        List<Direction> directions = new ArrayList<>();
        List<Length> lengths = new ArrayList<>();
        Direction heading = Direction.EAST;
        for (Leg leg : legs) {
            heading = heading.turnedLeft(leg.chord().value().orElseThrow().into());
            directions.add(heading);
            lengths.add(leg.length());
            heading = heading.turnedLeft(leg.chord().value().orElseThrow().outOf());
        }
        PlanLine line = new PlanLine(PlanPoint.inches(0, 0), directions, lengths);
        PlanPoint centre = PlanPoint.inches(0, 240);
        for (PlanPoint post : line.vertices())
            assertThat(post.distanceTo(centre).inches()).isCloseTo(240, within(1e-9));
        PlanPoint last = line.vertex(line.legs());
        assertThat(last.xIn()).isCloseTo(240, within(1e-9));
        assertThat(last.yIn()).isCloseTo(240, within(1e-9));
        assertThat(heading.bearing().inDegrees()).isCloseTo(0, within(1e-9));
    }

    /** c^2 / 8R of flat chords: 5 chords of 18 degrees on 20 ft are 75.1 in. long and 2.95 in. off; 4 would be 4.6 in. off. */
    @Test
    void asFewChordsAsTheSagittaAllows() {
        Arc arc = new Arc(Length.feet(20), Angle.degrees(90), Length.inches(3));
        assertThat(arc.chords(Length.feet(8))).isEqualTo(5);
        double chord = 2 * 240 * Math.sin(Math.toRadians(9));
        assertThat(arc.off(5).inches())
                .isCloseTo(chord * chord / 8 / 240, within(0.02))
                .isLessThan(3);
        assertThat(arc.off(4).inches()).isGreaterThan(3);
        assertThat(arc.chords(Length.feet(4))).isEqualTo(8);
        assertThat(new Arc(Length.feet(3), Angle.degrees(-270), Length.feet(2)).chords(Length.feet(8)))
                .isGreaterThanOrEqualTo(3);
    }
}
