package plumbleaf.engine.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbleaf.engine.quantity.Parsed.Read;
import plumbleaf.engine.quantity.Parsed.Refused;

/**
 * Lengths as people write them. Feet and inches with fractions of 2 to 64, inches, feet, mm, cm and m; read to whole nanometres, so
 * that either system is exact. The inch mark may be missing after feet: {@code 4' 2 1/2}.
 */
public final class LengthText {
    private static final BigDecimal NM_PER_INCH = BigDecimal.valueOf(25_400_000L);
    private static final BigDecimal LARGEST_NM = BigDecimal.valueOf(1e7).multiply(NM_PER_INCH);
    private static final String NUMBER = "(\\d+(?:\\.\\d+)?|\\.\\d+)";
    /** Doubles below this tell halves. */
    private static final double EXACT = 1L << 51;

    private static final Pattern METRIC = Pattern.compile(NUMBER + " ?(mm|cm|m)");
    private static final Pattern FEET = Pattern.compile(NUMBER + " ?'");
    private static final Pattern FEET_WORD = Pattern.compile(" ?(feet|foot|ft)\\.?");
    private static final Pattern INCH_WORD = Pattern.compile(" ?(inches|inch|in)\\.?$");
    private static final Pattern INCHES = Pattern.compile("(?:(\\d+)[ -])?(\\d+)/(\\d+)|" + NUMBER);
    private static final String EXAMPLES = "write 50\", 4' 2-1/2\" or 1270 mm";
    private static final int SIXTEENTHS = 16;

    private LengthText() {}

    /** Reads a length of zero or more. */
    public static Parsed<Length> length(String text) {
        return nanometres(text)
                .then(nm -> nm < 0
                        ? new Refused<>("a length is never negative", "leave the minus sign away")
                        : new Read<>(Length.nanometres(nm)));
    }

    /** Reads a height or distance that may carry a sign. */
    public static Parsed<Offset> offset(String text) {
        return nanometres(text).map(Offset::nanometres);
    }

    /** As {@link #length}, but a bare number takes the unit that the screen shows. */
    public static Parsed<Length> lengthOnScreen(String text, DisplayUnits shown) {
        return length(withUnit(text, shown));
    }

    /** As {@link #offset}, but a bare number takes the unit that the screen shows. */
    public static Parsed<Offset> offsetOnScreen(String text, DisplayUnits shown) {
        return offset(withUnit(text, shown));
    }

    private static String withUnit(String text, DisplayUnits shown) {
        String bare = text.strip();
        boolean noUnit = bare.matches("[-+]?[\\d./ -]+") && bare.matches(".*\\d.*");
        if (!noUnit) return bare;
        return shown == DisplayUnits.US ? bare + "\"" : bare + " mm";
    }

    private static Parsed<Long> nanometres(String text) {
        String plain = plainMarks(text);
        if (plain.isEmpty()) return new Refused<>("a length is missing", EXAMPLES);
        boolean negative = plain.startsWith("-");
        String body = negative || plain.startsWith("+") ? plain.substring(1).strip() : plain;
        Parsed<BigDecimal> size = metric(body);
        return size.then(nm -> wholeNanometres(negative ? nm.negate() : nm));
    }

    private static Parsed<BigDecimal> metric(String body) {
        Matcher matcher = METRIC.matcher(body);
        if (!matcher.matches()) return feetAndInches(body);
        long nmPerUnit = matcher.group(2).equals("mm")
                ? 1_000_000L
                : matcher.group(2).equals("cm") ? 10_000_000L : 1_000_000_000L;
        return new Read<>(new BigDecimal(matcher.group(1)).multiply(BigDecimal.valueOf(nmPerUnit)));
    }

    private static Parsed<BigDecimal> feetAndInches(String body) {
        Matcher feet = FEET.matcher(body);
        boolean hasFeet = feet.lookingAt();
        BigDecimal feetNm = hasFeet
                ? new BigDecimal(feet.group(1)).multiply(NM_PER_INCH).multiply(BigDecimal.valueOf(12))
                : BigDecimal.ZERO;
        String rest = hasFeet ? body.substring(feet.end()).strip() : body;
        if (rest.startsWith("-") && hasFeet) rest = rest.substring(1).strip();
        if (rest.isEmpty()) return hasFeet ? new Read<>(feetNm) : new Refused<>("a length is missing", EXAMPLES);
        boolean marked = rest.endsWith("\"");
        if (!marked && !hasFeet) {
            boolean number = INCHES.matcher(rest).matches();
            return number
                    ? new Refused<>("a length needs its unit", unitCure(rest))
                    : new Refused<>("this is not a length", EXAMPLES);
        }
        Parsed<BigDecimal> inches =
                inchesOf(marked ? rest.substring(0, rest.length() - 1).strip() : rest);
        return inches.then(value -> hasFeet && value.compareTo(BigDecimal.valueOf(12)) >= 0
                ? new Refused<>("there are 12 inches or more after the feet", "carry them into the feet")
                : new Read<>(feetNm.add(value.multiply(NM_PER_INCH))));
    }

    /** {@code 50} becomes {@code write 50" or 4' 2"}. */
    private static String unitCure(String number) {
        BigDecimal inches = inchesOf(number).value().orElse(BigDecimal.ZERO);
        if (inches.compareTo(BigDecimal.valueOf(12)) <= 0 || inches.compareTo(BigDecimal.valueOf(1e6)) > 0)
            return "write " + number + "\" or " + number + " mm";
        return "write " + number + "\" or " + feetAndInches(inches.doubleValue());
    }

    private static Parsed<BigDecimal> inchesOf(String text) {
        Matcher matcher = INCHES.matcher(text);
        if (!matcher.matches()) return new Refused<>("this is not a length", EXAMPLES);
        if (matcher.group(3) == null) return new Read<>(new BigDecimal(matcher.group(4)));
        BigDecimal whole = matcher.group(1) == null ? BigDecimal.ZERO : new BigDecimal(matcher.group(1));
        BigDecimal above = new BigDecimal(matcher.group(2));
        BigDecimal below = new BigDecimal(matcher.group(3));
        boolean tradeFraction = below.compareTo(BigDecimal.valueOf(64)) <= 0
                && Long.bitCount(below.longValue()) == 1
                && below.longValue() > 1;
        if (!tradeFraction)
            return new Refused<>(
                    "a fraction of an inch has 2, 4, 8, 16, 32 or 64 below",
                    "write it as a decimal or to the nearest 1/64");
        if (above.compareTo(below) >= 0)
            return new Refused<>("the fraction is a whole inch or more", "write the whole inches before it: 1-1/4\"");
        return new Read<>(whole.add(above.divide(below)));
    }

    private static Parsed<Long> wholeNanometres(BigDecimal nm) {
        if (nm.abs().compareTo(LARGEST_NM) >= 0)
            return new Refused<>("this is longer than 157 miles", "check the number and its unit");
        if (nm.stripTrailingZeros().scale() > 0)
            return new Refused<>("this is finer than a millionth of a millimeter", "write fewer decimals");
        return new Read<>(nm.longValueExact());
    }

    private static String plainMarks(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        plain = plain.replace('\u2019', '\'')
                .replace('\u2032', '\'')
                .replace("''", "\"")
                .replace('\u201d', '"')
                .replace('\u2033', '"')
                .replace('\u2212', '-');
        // Most lengths are written with marks, and are looked at thousands of times while somebody types.
        if (plain.indexOf('f') >= 0) plain = FEET_WORD.matcher(plain).replaceAll("'");
        if (plain.indexOf('i') >= 0) plain = INCH_WORD.matcher(plain).replaceAll("\"");
        plain = plain.replace("\u00bd", " 1/2").replace("\u00bc", " 1/4").replace("\u00be", " 3/4");
        plain = plain.replace("\u215b", " 1/8")
                .replace("\u215c", " 3/8")
                .replace("\u215d", " 5/8")
                .replace("\u215e", " 7/8");
        return Blanks.single(plain).strip();
    }

    /** To 1/16 in., halves away from zero, as the trade writes it: {@code 4' 2-1/2"}, below a foot {@code 10-1/2"}. */
    public static String feetAndInches(double inches) {
        long sixteenths = sixteenths(inches);
        long size = Math.abs(sixteenths);
        long feet = size / (12L * SIXTEENTHS);
        String inchText = inchesAndFraction(size % (12L * SIXTEENTHS));
        String sign = sixteenths < 0 ? "-" : "";
        return feet == 0 ? sign + inchText + "\"" : sign + feet + "' " + inchText + "\"";
    }

    /** To 1/16 in. in whole inches, as saw stops are set: {@code 50-1/2"}. */
    public static String inchesOnly(double inches) {
        long sixteenths = sixteenths(inches);
        return (sixteenths < 0 ? "-" : "") + inchesAndFraction(Math.abs(sixteenths)) + "\"";
    }

    /** To the nearest millimetre: {@code 1283 mm}. */
    public static String millimetres(double inches) {
        return DecimalText.fixed(inches * 25.4, 0) + " mm";
    }

    /** Exact text of a length for a file: trade fractions where they say it exactly, else decimal inches or millimetres. */
    public static String exact(double inches) {
        double in64ths = inches * 64;
        if (in64ths == Math.rint(in64ths) && Math.abs(inches) < 1e6) return exact64ths((long) in64ths);
        double mm = Math.rint(inches * 25_400_000.0) / 1_000_000.0;
        return DecimalText.shortest(mm) + " mm";
    }

    private static String exact64ths(long in64ths) {
        long size = Math.abs(in64ths);
        long feet = size / (12 * 64);
        long rest = size % (12 * 64);
        String inchText = fraction(rest, 64) + "\"";
        return (in64ths < 0 ? "-" : "") + (feet == 0 ? inchText : rest == 0 ? feet + "'" : feet + "' " + inchText);
    }

    /** Sixteen times a double and what of that is over a whole are exact, so the half is told for sure. */
    private static long sixteenths(double inches) {
        double times = Math.abs(inches) * SIXTEENTHS;
        if (times < EXACT) {
            long below = (long) times;
            long size = times - below < 0.5 ? below : below + 1;
            return inches < 0 ? -size : size;
        }
        return new BigDecimal(inches)
                .multiply(BigDecimal.valueOf(SIXTEENTHS))
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static String inchesAndFraction(long sixteenths) {
        return fraction(sixteenths, SIXTEENTHS);
    }

    private static String fraction(long parts, long perInch) {
        long whole = parts / perInch;
        long above = parts % perInch;
        if (above == 0) return Long.toString(whole);
        long below = perInch;
        while (above % 2 == 0) {
            above /= 2;
            below /= 2;
        }
        return whole == 0 ? above + "/" + below : whole + "-" + above + "/" + below;
    }
}
