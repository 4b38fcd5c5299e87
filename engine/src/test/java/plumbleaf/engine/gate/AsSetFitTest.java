package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.AsSet;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** A leaf between leaning posts, by numbers one can do in the head: leaf 72 high, hinges at 9 and 63. */
class AsSetFitTest {
    private static AsSetFit fit(double top, double middle, double bottom, double hinge, double inside, double latch) {
        AsSet reading = new AsSet(
                LocalDate.of(2027, 5, 3),
                Length.inches(top),
                Length.inches(middle),
                Length.inches(bottom),
                Offset.inches(hinge),
                Offset.inches(inside),
                Offset.inches(latch),
                Offset.ZERO);
        return AsSetFit.of(
                reading,
                72,
                List.of(new AsSetFit.At("h1", 9), new AsSetFit.At("h2", 63)),
                Length.inches(0.75),
                Length.inches(0.625));
    }

    @Test
    void plumbPostsLeaveTheOpening() {
        AsSetFit fit = fit(48, 48, 48, 0, 0, 0);
        assertThat(fit.clear().inches()).isEqualTo(48);
        assertThat(fit.packers()).allSatisfy(packer -> {
            assertThat(packer.along().inches()).isZero();
            assertThat(packer.inside().inches()).isZero();
        });
        assertThat(fit.misclosure().inches()).isZero();
    }

    /** Both lean 1/2 in. the same way: every reading says 48, and a plumb leaf has 47-1/2. */
    @Test
    void postsThatLeanTheSameWayLeaveLessThanAnyReading() {
        AsSetFit fit = fit(48, 48, 48, 0.5, 0, -0.5);
        assertThat(fit.clear().inches()).isCloseTo(47.5, within(1e-12));
        assertThat(fit.misclosure().inches()).isZero();
    }

    /** The hinge post leans 0.72 in. into the opening over 72: the low hinge is packed 0.63, the high one 0.09. */
    @Test
    void packersStandThePinsPlumb() {
        AsSetFit fit = fit(47.28, 47.64, 48, 0.72, 0.36, 0);
        assertThat(fit.packers().get(0).along().inches()).isCloseTo(0.63, within(1e-12));
        assertThat(fit.packers().get(1).along().inches()).isCloseTo(0.09, within(1e-12));
        assertThat(fit.packers().get(0).inside().inches()).isZero();
        assertThat(fit.packers().get(1).inside().inches()).isCloseTo(-0.27, within(1e-12));
        assertThat(fit.clear().inches()).isCloseTo(47.28, within(1e-12));
        assertThat(fit.hingeGaps().get(0).inches()).isCloseTo(0.75 + 0.72, within(1e-12));
    }

    /** The latch post leans 3/8 in. away: the gap widens upwards, 5/8 to 1 in. */
    @Test
    void theLatchGapTapersWithTheLatchPost() {
        AsSetFit fit = fit(48.375, 48.1875, 48, 0, 0, -0.375);
        assertThat(fit.clear().inches()).isEqualTo(48);
        assertThat(fit.latchGaps().get(2).inches()).isCloseTo(1, within(1e-12));
        assertThat(fit.misclosure().inches()).isCloseTo(0, within(1e-12));
    }

    @Test
    void readingsThatContradictEachOtherSaySo() {
        assertThat(fit(48, 48, 48, 0.5, 0, 0).misclosure().inches()).isCloseTo(0.5, within(1e-12));
    }

    /** 150 lb at 24 in., pins leaning 1 in 100 to the inside: a leaf that swings in opens itself with 36 lb-in, none at 90 degrees. */
    @Test
    void aLeaningAxisSwingsTheLeaf() {
        AsSetFit fit = fit(48, 48, 48, 0, 0.72, 0);
        Hand in = new Hand(Side.LEFT, SwingWay.IN);
        assertThat(fit.driftLbIn(in, 150, 24, 0)).isCloseTo(36, within(1e-9));
        assertThat(fit.driftLbIn(in, 150, 24, Math.PI / 2)).isCloseTo(0, within(1e-9));
        assertThat(fit.driftLbIn(new Hand(Side.LEFT, SwingWay.OUT), 150, 24, 0)).isCloseTo(-36, within(1e-9));
    }
}
