package plumbleaf.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as text, the same on every machine: no exponent, no minus zero, halves away from zero. The platform's own formatting
 * differs between Java versions and in the browser, so nothing here uses it.
 */
public final class DecimalText {
    /** Powers of ten that a double holds exactly. */
    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

    /** Below this many units of the last place a product is off by less than {@link #SURE} of one. */
    private static final double MOST_UNITS = 1e9;

    /** As near a half as this, only exact arithmetic says which way it is rounded; a product below a thousand million is off by 6e-8 at most. */
    private static final double SURE = 1e-6;

    private static final long UNSURE = Long.MIN_VALUE;

    private DecimalText() {}

    /** The shortest plain decimal that reads back as the same number, such as {@code 0.1} or {@code 1270}. */
    public static String shortest(double value) {
        if (Double.isNaN(value)) return "not a number";
        if (Double.isInfinite(value)) return value > 0 ? "infinity" : "-infinity";
        if (value == 0) return "0";
        if (value == Math.rint(value) && Math.abs(value) < 1e15) return Long.toString((long) value);
        BigDecimal exact = new BigDecimal(value);
        for (int digits = 15; digits <= 17; digits++) {
            BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (rounded.doubleValue() == value) return plain(rounded);
        }
        return plain(exact);
    }

    /** A fixed number of decimal places, halves away from zero: {@code fixed(-0.125, 2)} is {@code -0.13}. */
    public static String fixed(double value, int places) {
        long units = units(value, places);
        if (units != UNSURE) return pointed(units, places);
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
        if (rounded.signum() == 0) rounded = BigDecimal.ZERO.setScale(places);
        return rounded.toPlainString();
    }

    /** At most that many decimal places, without closing zeros: {@code upTo(2.50, 2)} is {@code 2.5}. */
    public static String upTo(double value, int places) {
        long units = units(value, places);
        if (units != UNSURE) return stripped(units, places);
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
        return plain(rounded);
    }

    /** At most that many figures, commas between thousands, no closing zeros after the point: {@code figures(26083.83, 5)} is {@code 26,084}. */
    public static String figures(double value, int figures) {
        if (value == 0) return "0";
        return grouped(plain(new BigDecimal(value).round(new MathContext(figures, RoundingMode.HALF_UP))));
    }

    /** A whole number with commas between thousands, halves away from zero: {@code 1,240}. */
    public static String whole(double value) {
        return grouped(fixed(value, 0));
    }

    /** How many units of the last place a number is, halves away from zero; {@link #UNSURE} where a double cannot tell. A drawing prints thousands of them. */
    private static long units(double value, int places) {
        if (places >= TENS.length) return UNSURE;
        double times = Math.abs(value) * TENS[places];
        if (!(times < MOST_UNITS)) return UNSURE;
        long below = (long) times;
        double rest = times - below;
        if (Math.abs(rest - 0.5) < SURE) return UNSURE;
        long units = rest > 0.5 ? below + 1 : below;
        return value < 0 ? -units : units;
    }

    private static String stripped(long units, int places) {
        long left = units;
        int point = places;
        while (point > 0 && left % 10 == 0) {
            left /= 10;
            point--;
        }
        return pointed(left, point);
    }

    private static String pointed(long units, int places) {
        if (places == 0) return Long.toString(units);
        String digits = Long.toString(Math.abs(units));
        StringBuilder text = new StringBuilder(digits.length() + places + 2);
        if (units < 0) text.append('-');
        int whole = digits.length() - places;
        if (whole > 0) text.append(digits, 0, whole);
        else text.append('0');
        text.append('.');
        for (int i = whole; i < 0; i++) text.append('0');
        return text.append(digits, Math.max(0, whole), digits.length()).toString();
    }

    private static String grouped(String digits) {
        boolean negative = digits.startsWith("-");
        String bare = negative ? digits.substring(1) : digits;
        int point = bare.indexOf('.') < 0 ? bare.length() : bare.indexOf('.');
        StringBuilder grouped = new StringBuilder();
        for (int i = 0; i < point; i++) {
            if (i > 0 && (point - i) % 3 == 0) grouped.append(',');
            grouped.append(bare.charAt(i));
        }
        grouped.append(bare, point, bare.length());
        return negative ? "-" + grouped : grouped.toString();
    }

    private static String plain(BigDecimal value) {
        if (value.signum() == 0) return "0";
        return value.stripTrailingZeros().toPlainString();
    }
}
