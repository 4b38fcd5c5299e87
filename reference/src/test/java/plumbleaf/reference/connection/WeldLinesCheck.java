package plumbleaf.reference.connection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.strength.WeldBox;
import plumbleaf.engine.strength.WeldLines;

/**
 * Weld groups as lines: two lines of 6 in., 4 in. apart, and a box all round a 4 x 6 tube, by the closed forms for A, S and J.
 *
 * Source: Blodgett, Design of Welded Structures, table of weld lines; AISC Manual part 8 elastic method (both from memory); the sums are done here by hand.
 * Tolerance: rounding of the last digit written.
 */
class WeldLinesCheck {
    private static final WeldLines PAIR = new WeldLines(Length.inches(6), Length.inches(4));

    /** A bracket, 1000 lb along the lines, 8 in. off: 83.3 direct, J = 36 + 48 = 84, T c / J = 8000 (2, 3) / 84: sqrt((83.3 + 190.5)2 + 285.7 2) = 395.7. */
    @Test
    void aBracketOffTheGroup() {
        assertThat(PAIR.perInch(0, 0, 1000, 8000, 0, 0).pounds()).isCloseTo(395.7, within(0.1));
    }

    /** Lifted at the ends: S = d2/3 = 12, 1200 lb-in is 100 lb an inch. About the lines: L b = 24, 1200 lb-in is 50. */
    @Test
    void momentsOffThePlane() {
        assertThat(PAIR.perInch(0, 0, 0, 0, 1200, 0).pounds()).isCloseTo(100, within(1e-9));
        assertThat(PAIR.perInch(0, 0, 0, 0, 0, 1200).pounds()).isCloseTo(50, within(1e-9));
        assertThat(PAIR.perInch(600, 0, 0, 0, 1200, 1200).pounds()).isCloseTo(200, within(1e-9));
    }

    /** b 4, d 6: S = b d + d2/3 = 36, across 24 + 16/3 = 29.33, J = 103/6 = 166.7. */
    @Test
    void allRoundATube() {
        WeldBox box = new WeldBox(Length.inches(6), Length.inches(4));
        assertThat(box.perInch(200, 0, 3600, 0, 0).pounds()).isCloseTo(10 + 100, within(1e-9));
        assertThat(box.perInch(0, 0, 0, 2933.333333, 0).pounds()).isCloseTo(100, within(1e-6));
        assertThat(box.perInch(0, 0, 0, 0, 1000).pounds()).isCloseTo(1000 * Math.sqrt(13) / (1000.0 / 6), within(1e-9));
    }
}
