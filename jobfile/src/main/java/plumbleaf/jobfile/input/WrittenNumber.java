package plumbleaf.jobfile.input;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.Predicate;

/** A number with its unit, in the fewest digits that read back as the very same value. */
final class WrittenNumber {
    private static final int MOST_DIGITS = 17;

    private WrittenNumber() {}

    /**
     * Fewest digits first. A value that was computed rather than read may have no text of 17 digits that comes back through the unit's
     * factor; then the closest is written.
     */
    static String of(double number, String unit, Predicate<String> same) {
        String text = "";
        for (int digits = 1; digits <= MOST_DIGITS; digits++) {
            text = plain(new BigDecimal(number).round(new MathContext(digits, RoundingMode.HALF_EVEN))) + unit;
            if (same.test(text)) return text;
        }
        return neighbour(number, unit, same, text);
    }

    /** A few steps of the last digit up and down, since the product with the unit's factor may skip the value itself. */
    private static String neighbour(double number, String unit, Predicate<String> same, String closest) {
        double up = number;
        double down = number;
        for (int step = 0; step < 4; step++) {
            up = Math.nextUp(up);
            down = Math.nextDown(down);
            String above = plain(new BigDecimal(up).round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN))) + unit;
            if (same.test(above)) return above;
            String below =
                    plain(new BigDecimal(down).round(new MathContext(MOST_DIGITS, RoundingMode.HALF_EVEN))) + unit;
            if (same.test(below)) return below;
        }
        return closest;
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
