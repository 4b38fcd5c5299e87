package plumbleaf.reference.style;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.strength.FabricTension;

/**
 * Pull of stretched fabric by its pull test, and what it does to a terminal that the top rail props.
 * Source: UFGS 02821A, high-security fence clause: 30 lb at the middle of a 10 ft bay moves the fabric 2-1/2 in. (CX34); closed form of a cantilever propped at its
 * free end under a uniform load, 3/8 w L and w L2 / 8 (AISC Manual Table 3-23, from memory).
 * Tolerance: 0.2 % of the pull; 1e-9 of the closed form.
 */
class FabricTensionCheck {
    @Test
    void pullByTheTest() {
        assertThat(FabricTension.byPullTest(Force.pounds(30), Length.feet(10), Length.inches(2.5))
                        .pounds())
                .isCloseTo(360, within(0.72));
    }

    @Test
    void downToTheGroundItIsTheProppedCantilever() {
        FabricTension tension = new FabricTension(Force.pounds(360), Length.inches(72), Length.ZERO);
        double w = 360 / 72.0;
        assertThat(tension.inTopRail().pounds()).isCloseTo(3 / 8.0 * w * 72, within(1e-9));
        assertThat(tension.atGrade(true).poundInches()).isCloseTo(w * 72 * 72 / 8, within(1e-6));
        assertThat(tension.atGrade(false).poundInches()).isCloseTo(w * 72 * 72 / 2, within(1e-6));
        assertThat(tension.atBase(true).pounds()).isCloseTo(5 / 8.0 * w * 72, within(1e-9));
    }

    /** With a gap below, the sum of thin slices: each a point load P at z, whose prop is P z2 (3 H - z) / (2 H3). */
    @Test
    void overAGapItIsTheSumOfItsSlices() {
        FabricTension tension = new FabricTension(Force.pounds(360), Length.inches(60), Length.inches(6));
        double h = 66;
        double prop = 0;
        int slices = 60_000;
        for (int i = 0; i < slices; i++) {
            double z = 6 + (i + 0.5) * 60 / slices;
            prop += 360.0 / slices * z * z * (3 * h - z) / (2 * h * h * h);
        }
        assertThat(tension.inTopRail().pounds()).isCloseTo(prop, within(1e-5));
    }
}
