package plumbleaf.reference.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.NearFooting;
import plumbleaf.engine.quantity.Length;

/**
 * What is left of the lateral soil beside another pier.
 * Source: Kouretzis, Fundamentals of Foundation Engineering (OER Collective), example 6.16: side by side at s/D = 3, 0.64 x 3^0.34 = 0.929; skewed, the root of
 * the squares by cosine and sine of the angle.
 * Tolerance: one in the last of the three printed digits, which cut 0.9298 off.
 */
class NearFootingCheck {
    private static final Length WIDE = Length.inches(12);

    @Test
    void sideBySide() {
        assertThat(NearFooting.factor(WIDE.times(3), WIDE, 0)).isCloseTo(0.929, within(0.001));
        assertThat(NearFooting.factor(WIDE.times(4), WIDE, 0)).isEqualTo(1);
    }

    /** At 50.2 degrees to the line: between side by side and behind each other, 0.48 x 3^0.38 = 0.7287 by hand. */
    @Test
    void skewed() {
        double cos = Math.cos(Math.toRadians(50.2));
        double hand = Math.sqrt(0.7287 * 0.7287 * cos * cos + 0.929 * 0.929 * (1 - cos * cos));
        assertThat(NearFooting.factor(WIDE.times(3), WIDE, cos * cos)).isCloseTo(hand, within(0.001));
    }

    @Test
    void moreIsLeftTheFurtherApart() {
        double before = 0;
        for (double widths = 0.5; widths < NearFooting.FAR_WIDTHS + 1; widths += 0.25) {
            double now = NearFooting.factor(WIDE.times(widths), WIDE, 1);
            assertThat(now).isBetween(before, 1.0);
            before = now;
        }
        assertThat(before).isEqualTo(1);
    }
}
