package plumbleaf.engine.quantity;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbleaf.engine.quantity.Parsed.Read;
import plumbleaf.engine.quantity.Parsed.Refused;

/** Everything measured that is not a length, as people write it: {@code 8%}, {@code 1 in 12}, {@code 60 lb}, {@code 115 mph}, {@code 90 deg}. */
public final class QuantityText {
    private static final Pattern WITH_UNIT = Pattern.compile("([-+]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)) ?([^\\d ].*)?");
    private static final Pattern ONE_IN = Pattern.compile("([-+]?)(\\d+(?:\\.\\d+)?) in (\\d+(?:\\.\\d+)?)");
    private static final double POUNDS_PER_NEWTON = 1 / MetricFactor.NEWTON_PER_LB;
    private static final double PSF_PER_PASCAL = POUNDS_PER_NEWTON * 0.3048 * 0.3048;
    private static final double MPH_PER_METRE_PER_SECOND = 3600 / 1609.344;

    private QuantityText() {}

    /** A grade: {@code 8%} or {@code 1 in 12}. */
    public static Parsed<Slope> slope(String text) {
        Matcher oneIn = ONE_IN.matcher(plain(text));
        if (oneIn.matches()) {
            double run = Double.parseDouble(oneIn.group(3));
            if (run == 0) return new Refused<>("a grade needs a run above zero", "write 8% or 1 in 12");
            double rise = Double.parseDouble(oneIn.group(2)) * (oneIn.group(1).equals("-") ? -1 : 1);
            return ranged(rise / run, Slope::new, -10, 10, "a grade is within 1000 %");
        }
        return unit(text, "a grade", "write 8% or 1 in 12", "%")
                .then(value -> ranged(value.number() / 100, Slope::new, -10, 10, "a grade is within 1000 %"));
    }

    /** A share of something: {@code 12%}, as a ratio. */
    public static Parsed<Double> share(String text) {
        return unit(text, "a share", "write 12%", "%")
                .then(value -> ranged(value.number() / 100, Double::valueOf, 0, 10, "a share is 0 to 1000 %"));
    }

    public static Parsed<Angle> angle(String text) {
        return unit(text, "an angle", "write 90 deg", "deg", "degrees", "\u00b0")
                .then(value -> ranged(value.number(), Angle::degrees, -3600, 3600, "an angle is within 3600 deg"));
    }

    public static Parsed<Speed> speed(String text) {
        return unit(text, "a wind speed", "write 115 mph or 51 m/s", "mph", "m/s", "km/h")
                .then(value -> {
                    double mph = switch (value.unit()) {
                        case "m/s" -> value.number() * MPH_PER_METRE_PER_SECOND;
                        case "km/h" -> value.number() / 1.609344;
                        default -> value.number();
                    };
                    return ranged(mph, Speed::new, 0, 400, "a wind speed is 0 to 400 mph");
                });
    }

    public static Parsed<Force> force(String text) {
        return unit(text, "a force or weight", "write 60 lb or 270 N", "lb", "lbs", "lbf", "n", "kn", "kg")
                .then(value -> {
                    double pounds = switch (value.unit()) {
                        case "n" -> value.number() * POUNDS_PER_NEWTON;
                        case "kn" -> value.number() * 1000 * POUNDS_PER_NEWTON;
                        case "kg" -> value.number() / 0.45359237;
                        default -> value.number();
                    };
                    return ranged(pounds, Force::new, 0, 1e6, "a force is 0 to 1,000,000 lb");
                });
    }

    /** A moment: {@code 250 lb-ft}, {@code 3000 lb-in} or {@code 340 N m}. */
    public static Parsed<Moment> moment(String text) {
        return unit(text, "a moment", "write 250 lb-ft, 3000 lb-in or 340 Nm", "lb-in", "lb-ft", "nm", "n m", "n-m")
                .then(value -> {
                    double poundInches = switch (value.unit()) {
                        case "lb-in" -> value.number();
                        case "lb-ft" -> value.number() * 12;
                        default -> value.number() * POUNDS_PER_NEWTON / 0.0254;
                    };
                    return ranged(poundInches, Moment::new, 0, 1e7, "a moment is 0 to 10,000,000 lb-in");
                });
    }

    public static Parsed<Pressure> pressure(String text) {
        return unit(text, "a pressure", "write 20 psf or 0.96 kPa", "psf", "kpa", "psi")
                .then(value -> {
                    double psf = switch (value.unit()) {
                        case "kpa" -> value.number() * 1000 * PSF_PER_PASCAL;
                        case "psi" -> value.number() * 144;
                        default -> value.number();
                    };
                    return ranged(psf, Pressure::new, 0, 1e6, "a pressure is 0 to 1,000,000 psf");
                });
    }

    public static Parsed<Stress> stress(String text) {
        return unit(text, "a stress", "write 46 ksi or 317 MPa", "ksi", "psi", "mpa")
                .then(value -> {
                    double psi = switch (value.unit()) {
                        case "ksi" -> value.number() * 1000;
                        case "mpa" -> value.number() * 1e6 * PSF_PER_PASCAL / 144;
                        default -> value.number();
                    };
                    return ranged(psi, Stress::new, 0, 1e8, "a stress is 0 to 100,000 ksi");
                });
    }

    public static Parsed<Density> density(String text) {
        return unit(text, "a density", "write 35 pcf or 560 kg/m3", "pcf", "lb/ft3", "kg/m3")
                .then(value -> ranged(
                        value.unit().equals("kg/m3") ? value.number() / 16.01846337396014 : value.number(),
                        Density::new,
                        0,
                        2000,
                        "a density is 0 to 2000 pcf"));
    }

    public static Parsed<SoilRate> soilRate(String text) {
        return unit(text, "a soil rate n_h", "write 24.3 lb/in3 or 6.6 MN/m3", "lb/in3", "pci", "mn/m3")
                .then(value -> ranged(
                        value.unit().equals("mn/m3")
                                ? value.number() * 1e6 * POUNDS_PER_NEWTON * 0.0254 * 0.0254 * 0.0254
                                : value.number(),
                        SoilRate::new,
                        0.01,
                        1e4,
                        "a soil rate is 0.01 to 10,000 lb/in3"));
    }

    private record NumberAndUnit(double number, String unit) {}

    private static Parsed<NumberAndUnit> unit(String text, String what, String cure, String... units) {
        Matcher matcher = WITH_UNIT.matcher(plain(text));
        if (!matcher.matches()) return new Refused<>("this is not " + what, cure);
        if (matcher.group(2) == null) return new Refused<>(what + " needs its unit", cure);
        String found = matcher.group(2).strip();
        for (String unit : units) {
            if (unit.equals(found))
                return new Read<>(new NumberAndUnit(new BigDecimal(matcher.group(1)).doubleValue(), unit));
        }
        return new Refused<>("\"" + found + "\" is no unit for " + what, cure);
    }

    private static <T> Parsed<T> ranged(double value, DoubleFunction<T> make, double least, double most, String range) {
        if (!(value >= least && value <= most)) return new Refused<>(range, "check the number and its unit");
        return new Read<>(make.apply(value));
    }

    private static String plain(String text) {
        return Blanks.single(text.strip().toLowerCase(Locale.ROOT).replace('\u2212', '-'));
    }
}
