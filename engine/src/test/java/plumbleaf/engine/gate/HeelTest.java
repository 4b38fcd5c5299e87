package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;

/** The heel against closed forms. */
class HeelTest {
    private static final Section SQUARE = GateSamples.section("POST", Shape.SQUARE, 4, 0.188, 9);
    private static final Section ROUND = GateSamples.section("POST", Shape.ROUND, 2.875, 0.203, 5.8);
    private static final Angle QUARTER = Angle.degrees(90);

    /** Corner (3/8, 1) turns on sqrt(9/64 + 1) = 1.068 from 69.4 degrees and meets the flat 3/8 behind the pin at acos(-0.375 / 1.068) - 69.4. */
    @Test
    void aFlatPostIsMetByTheCorner() {
        double radius = Math.hypot(0.375, 1);
        double expected = Math.acos(-0.375 / radius) - Math.atan2(1, 0.375);
        assertThat(Heel.contact(SQUARE, 0.375, 1, GateSamples.pin(0.375, 0), QUARTER)
                        .radians())
                .isCloseTo(expected, within(1e-9));
    }

    /** (r0 + A cos q)2 + (A sin q - f)2 = R2 with A = p + R: r0 cos q - f sin q = (R2 - r02 - f2 - A2) / 2A. */
    @Test
    void aRoundPostIsMetLater() {
        double away = 0.375 + 1.4375;
        double right = (1.4375 * 1.4375 - 0.375 * 0.375 - 1 - away * away) / (2 * away);
        double expected = Math.acos(right / Math.hypot(0.375, 1)) - Math.atan2(1, 0.375);
        double found = Heel.contact(ROUND, 0.375, 1, GateSamples.pin(0.375, 0), QUARTER)
                .radians();
        assertThat(found).isCloseTo(expected, within(1e-9));
        assertThat(found)
                .isGreaterThan(Heel.contact(SQUARE, 0.375, 1, GateSamples.pin(0.375, 0), QUARTER)
                        .radians());
    }

    /** With the pin as far off the post as the corner is from the pin, nothing meets up to 90 degrees. */
    @Test
    void aPinFurtherOffThanTheCornerClears() {
        assertThat(Heel.contact(SQUARE, 0.375, 1, GateSamples.pin(1.07, 0), QUARTER))
                .isEqualTo(QUARTER);
    }

    /** A pin past the leaf's face (f - e < 0) lets the corner move away from the post at once; at half a turn 2 e - f = 2 in. holds the leaf off half of a 4 in. post. */
    @Test
    void aPinOffTheSwingSideClearsHalfATurn() {
        Angle half = Angle.degrees(180);
        assertThat(Heel.contact(SQUARE, 0.375, 1, GateSamples.pin(0.375, 1.51), half))
                .isEqualTo(half);
        assertThat(Heel.contact(ROUND, 0.375, 1, GateSamples.pin(0.375, 1.25), half))
                .isEqualTo(half);
    }

    /** 2 e - f = 1.8 in. is less than 2 in.: the leading face meets the post's corner (p, s - e) where p sin q + (s - e) cos q = f - e. */
    @Test
    void aPinNotFarEnoughOffMeetsTheCornerBeforeHalfATurn() {
        double s = 2 - 1.4;
        double found = Heel.contact(SQUARE, 0.375, 1, GateSamples.pin(0.375, 1.4), Angle.degrees(180))
                .radians();
        double there = 0.375 * Math.sin(found) + s * Math.cos(found);
        assertThat(there).isCloseTo(1 - 1.4, within(1e-9));
        assertThat(found).isLessThan(Math.PI);
    }
}
