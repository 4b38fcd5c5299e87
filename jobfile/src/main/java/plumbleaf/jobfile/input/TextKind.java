package plumbleaf.jobfile.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.MoneyText;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.engine.quantity.Parsed.Read;
import plumbleaf.engine.quantity.Parsed.Refused;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.QuantityText;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.quantity.Stress;

/**
 * A kind of text that a field of a file may hold, read and written by the same rule: what is written reads back the same.
 *
 * @param what with its article: {@code a length}
 * @param measured whether it is a number with a unit
 * @param example one that could stand there
 */
public record TextKind<T>(
        String what, boolean measured, String example, Function<String, Parsed<T>> read, Function<T, String> write) {
    private static final int LONGEST_WORDS = 2000;

    public static final TextKind<Length> LENGTH =
            new TextKind<>("a length", true, "4' 2\"", LengthText::length, length -> LengthText.exact(length.inches()));
    /** A length above zero. */
    public static final TextKind<Length> SIZE = new TextKind<>(
            "a length",
            true,
            "4' 2\"",
            text -> LengthText.length(text)
                    .then(length -> length.isZero()
                            ? new Refused<>(
                                    "this must be more than zero", "write a length above zero, or leave the key away")
                            : new Read<>(length)),
            length -> LengthText.exact(length.inches()));

    public static final TextKind<Offset> OFFSET = new TextKind<>(
            "a height or distance", true, "-10\"", LengthText::offset, offset -> LengthText.exact(offset.inches()));
    public static final TextKind<Slope> SLOPE =
            new TextKind<>("a grade", true, "8%", QuantityText::slope, TextKind::slopeText);
    /** A share as a ratio: 12% is 0.12. */
    public static final TextKind<Double> SHARE = new TextKind<>(
            "a share",
            true,
            "12%",
            QuantityText::share,
            share -> WrittenNumber.of(
                    share * 100,
                    "%",
                    text -> QuantityText.share(text)
                            .value()
                            .filter(share::equals)
                            .isPresent()));

    public static final TextKind<Angle> ANGLE = new TextKind<>(
            "an angle",
            true,
            "90 deg",
            QuantityText::angle,
            angle -> WrittenNumber.of(
                    angle.inDegrees(),
                    " deg",
                    text -> QuantityText.angle(text)
                            .value()
                            .filter(angle::equals)
                            .isPresent()));
    public static final TextKind<Speed> SPEED = new TextKind<>(
            "a wind speed",
            true,
            "115 mph",
            QuantityText::speed,
            speed -> WrittenNumber.of(
                    speed.mph(),
                    " mph",
                    text -> QuantityText.speed(text)
                            .value()
                            .filter(speed::equals)
                            .isPresent()));
    public static final TextKind<Force> FORCE = new TextKind<>(
            "a force or weight",
            true,
            "60 lb",
            QuantityText::force,
            force -> WrittenNumber.of(
                    force.pounds(),
                    " lb",
                    text -> QuantityText.force(text)
                            .value()
                            .filter(force::equals)
                            .isPresent()));
    public static final TextKind<Moment> MOMENT = new TextKind<>(
            "a moment",
            true,
            "250 lb-ft",
            QuantityText::moment,
            moment -> WrittenNumber.of(
                    moment.poundInches(),
                    " lb-in",
                    text -> QuantityText.moment(text)
                            .value()
                            .filter(moment::equals)
                            .isPresent()));
    public static final TextKind<SoilRate> SOIL_RATE = new TextKind<>(
            "a soil rate n_h",
            true,
            "24.3 lb/in3",
            QuantityText::soilRate,
            rate -> WrittenNumber.of(
                    rate.poundsPerCubicInch(),
                    " lb/in3",
                    text -> QuantityText.soilRate(text)
                            .value()
                            .filter(rate::equals)
                            .isPresent()));
    public static final TextKind<Stress> STRESS = new TextKind<>(
            "a strength",
            true,
            "2500 psi",
            QuantityText::stress,
            stress -> WrittenNumber.of(
                    stress.psi(),
                    " psi",
                    text -> QuantityText.stress(text)
                            .value()
                            .filter(stress::equals)
                            .isPresent()));
    public static final TextKind<Pressure> PRESSURE = new TextKind<>(
            "a pressure",
            true,
            "1000 psf",
            QuantityText::pressure,
            pressure -> WrittenNumber.of(
                    pressure.psf(),
                    " psf",
                    text -> QuantityText.pressure(text)
                            .value()
                            .filter(pressure::equals)
                            .isPresent()));
    public static final TextKind<Money> MONEY =
            new TextKind<>("an amount of money", true, "$1,240.00", MoneyText::money, Money::text);
    public static final TextKind<LocalDate> DATE =
            new TextKind<>("a date", false, "2027-04-19", TextKind::date, LocalDate::toString);
    /** Any words, but not none. */
    public static final TextKind<String> WORDS =
            new TextKind<>("a text", false, "a few words", TextKind::words, text -> text);

    /** A length above zero and of at most so much, beyond which a slip of the pen is likelier than a wish. */
    public static TextKind<Length> sizeUpTo(Length most) {
        return new TextKind<>(
                SIZE.what(),
                true,
                SIZE.example(),
                text -> SIZE.read().apply(text).then(length -> within(text, length, length, most)),
                SIZE.write());
    }

    /** A length of zero or more and of at most so much. */
    public static TextKind<Length> lengthUpTo(Length most) {
        return new TextKind<>(
                LENGTH.what(),
                true,
                LENGTH.example(),
                text -> LENGTH.read().apply(text).then(length -> within(text, length, length, most)),
                LENGTH.write());
    }

    /** A signed distance of at most so much either way. */
    public static TextKind<Offset> offsetUpTo(Length most) {
        return new TextKind<>(
                OFFSET.what(),
                true,
                OFFSET.example(),
                text -> OFFSET.read().apply(text).then(offset -> within(text, offset, offset.size(), most)),
                OFFSET.write());
    }

    /** The most is told in the units that the value was written in. */
    private static <T> Parsed<T> within(String text, T value, Length size, Length most) {
        if (size.compareTo(most) <= 0) return new Read<>(value);
        String limit = text.strip().endsWith("m") ? metres(most) : LengthText.exact(most.inches());
        return new Refused<>("this is more than " + limit + ", the most here", "check the number and its unit");
    }

    private static String metres(Length length) {
        double metres = length.inches() * 0.0254;
        return metres < 10 ? DecimalText.upTo(metres * 1000, 0) + " mm" : DecimalText.upTo(metres, 1) + " m";
    }

    /** A share of at most the whole. */
    public static TextKind<Double> shareUpTo(double most) {
        return new TextKind<>(
                SHARE.what(),
                true,
                SHARE.example(),
                text -> SHARE.read()
                        .apply(text)
                        .then(share -> share > most
                                ? new Refused<>(
                                        "this is more than " + SHARE.write().apply(most),
                                        "check the number and its unit")
                                : new Read<>(share)),
                SHARE.write());
    }

    /** One of the words that a set of values goes by. */
    public static <T> TextKind<T> oneOf(String what, List<T> values, Function<T, String> key) {
        List<String> words = new ArrayList<>();
        for (T value : values) words.add(key.apply(value));
        return new TextKind<>(what, false, words.get(0), text -> picked(what, values, words, text), key);
    }

    /** As a percentage, or as {@code 1 in 12} where that says it in fewer digits, or as rise in 1 where no percentage is exact. */
    private static String slopeText(Slope slope) {
        String percent = WrittenNumber.of(slope.ratio() * 100, "%", text -> isSlope(text, slope));
        double run = Math.rint(1 / Math.abs(slope.ratio()));
        boolean nearlyWhole = !slope.isZero() && run >= 1 && run <= 1000;
        String oneIn = (slope.ratio() < 0 ? "-1 in " : "1 in ") + DecimalText.shortest(nearlyWhole ? run : 1);
        if (percent.length() > oneIn.length() && nearlyWhole && isSlope(oneIn, slope)) return oneIn;
        return isSlope(percent, slope) ? percent : DecimalText.shortest(slope.ratio()) + " in 1";
    }

    private static boolean isSlope(String text, Slope slope) {
        return QuantityText.slope(text).value().filter(slope::equals).isPresent();
    }

    private static <T> Parsed<T> picked(String what, List<T> values, List<String> words, String text) {
        int at = words.indexOf(text);
        if (at >= 0) return new Read<>(values.get(at));
        String cure = Nearest.to(text, words)
                .map(word -> "write " + word)
                .orElse((words.size() == 1 ? "write " : "write one of ") + String.join(", ", words));
        return new Refused<>("this is not " + what, cure);
    }

    private static Parsed<String> words(String text) {
        if (text.isBlank()) return new Refused<>("a text is missing", "write it, or leave the key away");
        if (text.length() > LONGEST_WORDS)
            return new Refused<>("this text has more than 2,000 characters", "shorten it");
        return new Read<>(text);
    }

    private static Parsed<LocalDate> date(String text) {
        Refused<LocalDate> refused = new Refused<>("this is not a date", "write year-month-day, such as 2027-04-19");
        boolean shaped = text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-';
        if (!shaped) return refused;
        for (int i = 0; i < text.length(); i++) {
            boolean digit = text.charAt(i) >= '0' && text.charAt(i) <= '9';
            if (i != 4 && i != 7 && !digit) return refused;
        }
        try {
            return new Read<>(LocalDate.of(
                    Integer.parseInt(text.substring(0, 4)),
                    Integer.parseInt(text.substring(5, 7)),
                    Integer.parseInt(text.substring(8))));
        } catch (DateTimeException e) {
            return new Refused<>("there is no such day", "write year-month-day, such as 2027-04-19");
        }
    }
}
