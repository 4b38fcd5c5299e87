package plumbleaf.web.page;

import java.util.Optional;
import java.util.regex.Pattern;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.MetricFactor;
import plumbleaf.engine.quantity.QuantityText;

/** The unit that a bare number takes on a screen, because the screen shows it beside the field. */
public enum Unit {
    INCHES("in", "\""),
    FEET("ft", "'"),
    MILLIMETRES("mm", " mm"),
    PERCENT("%", "%"),
    DEGREES("deg", " deg"),
    MPH("mph", " mph"),
    POUNDS("lb", " lb"),
    PSI("psi", " psi"),
    PSF("psf", " psf"),
    POUND_FEET("lb-ft", " lb-ft"),
    SOIL_RATE("lb/in\u00b3", " lb/in3"),
    METRES_A_SECOND("m/s", " m/s"),
    NEWTONS("N", " N"),
    MEGAPASCALS("MPa", " MPa"),
    KILOPASCALS("kPa", " kPa"),
    NEWTON_METRES("Nm", " Nm"),
    METRIC_SOIL_RATE("MN/m\u00b3", " MN/m3"),
    /** A count: written as a number, not as text. */
    COUNT("", ""),
    /** Words: nothing is added. */
    WORDS("", "");

    private static final Pattern METRIC = Pattern.compile("(?i)(?:m|m/s|km/h|n|kn|kg|kpa|mpa|nm|n m|n-m|mn/m3)$");

    private final String shown;
    private final String ending;

    Unit(String shown, String ending) {
        this.shown = shown;
        this.ending = ending;
    }

    public String shown() {
        return shown;
    }

    public boolean isLength() {
        return this == INCHES || this == FEET || this == MILLIMETRES;
    }

    /** The keyboard a phone shows for it; its usual one where empty. */
    public String keyboard() {
        return switch (this) {
            case COUNT -> "numeric";
            case INCHES, FEET, WORDS -> "";
            default -> "decimal";
        };
    }

    /** What was typed, with this unit where it had none. */
    public String complete(String typed) {
        String text = typed.strip();
        return text.matches("[-+]?(\\d+[ -])?\\d*([./]\\d+)?") && !text.isEmpty() ? text + ending : text;
    }

    /** The same in a job of those units: what is typed and shown is metric there, whatever the file writes. */
    public Unit in(DisplayUnits units) {
        if (units == DisplayUnits.US) return this;
        return switch (this) {
            case INCHES, FEET -> MILLIMETRES;
            case MPH -> METRES_A_SECOND;
            case POUNDS -> NEWTONS;
            case PSI -> MEGAPASCALS;
            case PSF -> KILOPASCALS;
            case POUND_FEET -> NEWTON_METRES;
            case SOIL_RATE -> METRIC_SOIL_RATE;
            default -> this;
        };
    }

    /**
     * What the file says as a job of those units shows it; what has no unit as it stands. What was written in the units shown keeps its
     * own form, so that nothing is rounded by being looked at.
     */
    public String shown(String written, DisplayUnits units) {
        if (in(DisplayUnits.METRIC) == this) return written;
        boolean metric = METRIC.matcher(written.strip()).find();
        if (metric == (units == DisplayUnits.METRIC)) return written;
        return converted(written, units).orElse(written);
    }

    private Optional<String> converted(String written, DisplayUnits units) {
        boolean us = units == DisplayUnits.US;
        return switch (this) {
            case INCHES, FEET -> LengthText.offset(written).value().map(units::length);
            case MPH ->
                QuantityText.speed(written)
                        .value()
                        .map(is -> DecimalText.upTo(us ? is.mph() : is.mph() * MetricFactor.METRES_A_SECOND_PER_MPH, 1)
                                + in(units).ending);
            case POUNDS ->
                QuantityText.force(written)
                        .value()
                        .map(is ->
                                plain(us ? is.pounds() : is.pounds() * MetricFactor.NEWTON_PER_LB) + in(units).ending);
            case PSI ->
                QuantityText.stress(written)
                        .value()
                        .map(is ->
                                us ? plain(is.psi()) + ending : tenths(is.psi() * MetricFactor.MPA_PER_PSI) + " MPa");
            case PSF ->
                QuantityText.pressure(written)
                        .value()
                        .map(is ->
                                us ? plain(is.psf()) + ending : tenths(is.psf() * MetricFactor.KPA_PER_PSF) + " kPa");
            case POUND_FEET ->
                QuantityText.moment(written)
                        .value()
                        .map(is -> plain(us ? is.inPoundFeet() : is.poundInches() * MetricFactor.NM_PER_LB_IN)
                                + in(units).ending);
            case SOIL_RATE ->
                QuantityText.soilRate(written)
                        .value()
                        .map(is -> us
                                ? tenths(is.poundsPerCubicInch()) + ending
                                : tenths(is.poundsPerCubicInch() * MetricFactor.MN_M3_PER_LB_IN3) + " MN/m3");
            default -> Optional.empty();
        };
    }

    /** Whole, and without the comma that a field would not read back. */
    private static String plain(double value) {
        return DecimalText.upTo(value, 0);
    }

    private static String tenths(double value) {
        return DecimalText.upTo(value, 1);
    }

    public static Optional<Unit> of(String name) {
        for (Unit unit : values()) if (unit.name().equals(name)) return Optional.of(unit);
        return Optional.empty();
    }
}
