package plumbleaf.reference.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.support.Bell;

/**
 * Concrete of a belled hole.
 * Source: geometry of a cone's frustum, pi h (D2 + D d + d2) / 12, against the sum of 200,000 thin discs.
 * Tolerance: 1e-9 of the closed form, 1e-6 of the sum.
 */
class BellCheck {
    private static final HoleSize SHAFT = new HoleSize(Length.inches(12), Length.inches(48));
    private static final Bell BELL = new Bell(Length.inches(24), Length.inches(12));

    @Test
    void frustum() {
        double extra = Pour.bellExtraIn3(SHAFT, BELL);
        double frustum = Math.PI * 12 * (24 * 24 + 24 * 12 + 12 * 12) / 12;
        double shaft = Math.PI * 12 * 12 / 4 * 12;
        assertThat(extra).isCloseTo(frustum - shaft, within(1e-9 * extra));
        double discs = 0;
        int count = 200_000;
        for (int i = 0; i < count; i++) {
            double d = 12 + 12 * (i + 0.5) / count;
            discs += Math.PI * (d * d - 144) / 4 * 12 / count;
        }
        assertThat(extra).isCloseTo(discs, within(1e-6 * extra));
    }

    @Test
    void withoutABellNothingIsAdded() {
        Area post = Area.squareInches(6);
        assertThat(Pour.of(SHAFT, post, Bell.NONE)).isEqualTo(Pour.of(SHAFT, post));
        assertThat(Pour.of(SHAFT, post, BELL).volume().cubicFeet())
                .isGreaterThan(Pour.of(SHAFT, post).volume().cubicFeet());
    }
}
