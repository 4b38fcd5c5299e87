package plumbleaf.jobfile.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.MoneyText;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.engine.quantity.Parsed.Read;
import plumbleaf.engine.quantity.Parsed.Refused;
import plumbleaf.engine.quantity.QuantityText;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Speed;

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
    public static final TextKind<Slope> SLOPE = new TextKind<>(
            "a grade",
            true,
            "8%",
            QuantityText::slope,
            slope -> WrittenNumber.of(
                    slope.ratio() * 100,
                    "%",
                    text -> QuantityText.slope(text)
                            .value()
                            .filter(slope::equals)
                            .isPresent()));
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
    public static final TextKind<Money> MONEY =
            new TextKind<>("an amount of money", true, "$1,240.00", MoneyText::money, Money::text);
    public static final TextKind<LocalDate> DATE =
            new TextKind<>("a date", false, "2027-04-19", TextKind::date, LocalDate::toString);
    /** Any words, but not none. */
    public static final TextKind<String> WORDS =
            new TextKind<>("a text", false, "a few words", TextKind::words, text -> text);

    /** One of the words that a set of values goes by. */
    public static <T> TextKind<T> oneOf(String what, List<T> values, Function<T, String> key) {
        List<String> words = new ArrayList<>();
        for (T value : values) words.add(key.apply(value));
        return new TextKind<>(what, false, words.get(0), text -> picked(what, values, words, text), key);
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
