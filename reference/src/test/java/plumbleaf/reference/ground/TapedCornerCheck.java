package plumbleaf.reference.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Heading;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A corner from three tapes against triangles everybody knows: 3-4-5 is square, 1-1-1 turns 120 degrees, 5-7-8 holds 60 degrees between 5 and 8.
 *
 * Source: Euclid, Elements I.47 and II.12 to II.13 (law of cosines).
 *
 * Tolerance: 1e-12 of a radian, rounding.
 */
class TapedCornerCheck {
    private static double turnDeg(double before, double leg, double across, Side side) {
        Heading.Diagonal diagonal = new Heading.Diagonal(Length.feet(across), side);
        assertThat(diagonal.closes(Length.feet(before), Length.feet(leg))).isTrue();
        return diagonal.turn(Length.feet(before), Length.feet(leg)).inDegrees();
    }

    @Test
    void threeFourFiveIsSquare() {
        assertThat(turnDeg(30, 40, 50, Side.LEFT)).isCloseTo(90, within(1e-10));
        assertThat(turnDeg(30, 40, 50, Side.RIGHT)).isCloseTo(-90, within(1e-10));
    }

    @Test
    void equalSidesTurnAHundredAndTwenty() {
        assertThat(turnDeg(7, 7, 7, Side.LEFT)).isCloseTo(120, within(1e-10));
    }

    @Test
    void fiveSevenEightHoldsSixtyDegreesBetweenFiveAndEight() {
        assertThat(turnDeg(50, 80, 70, Side.RIGHT)).isCloseTo(-120, within(1e-10));
    }

    @Test
    void tapesThatReachNoTriangleAreTold() {
        Heading.Diagonal tooLong = new Heading.Diagonal(Length.feet(71), Side.LEFT);
        assertThat(tooLong.closes(Length.feet(30), Length.feet(40))).isFalse();
        assertThat(tooLong.turn(Length.feet(30), Length.feet(40)).inDegrees()).isZero();
    }

    /** Offsets of 3 and 4 make a leg of 5 whose turn has the tangent 4/3. */
    @Test
    void offsetsGiveLengthAndTurn() {
        Heading.Offsets offsets = new Heading.Offsets(new Offset(36), new Offset(-48));
        assertThat(offsets.length().inches()).isCloseTo(60, within(1e-12));
        assertThat(offsets.turn().radians()).isCloseTo(-StrictMath.atan(4.0 / 3), within(1e-12));
    }
}
