package plumbleaf.web.page;

import java.util.Optional;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;

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
    /** A count: written as a number, not as text. */
    COUNT("", ""),
    /** Words: nothing is added. */
    WORDS("", "");

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
            case MILLIMETRES, PERCENT, DEGREES, MPH, POUNDS, PSI, PSF -> "decimal";
            case INCHES, FEET, WORDS -> "";
        };
    }

    /** What was typed, with this unit where it had none. */
    public String complete(String typed) {
        String text = typed.strip();
        return text.matches("[-+]?(\\d+[ -])?\\d*([./]\\d+)?") && !text.isEmpty() ? text + ending : text;
    }

    /** The same in a job of those units: lengths are typed and shown in millimeters, whatever the file writes. */
    public Unit in(DisplayUnits units) {
        boolean length = this == INCHES || this == FEET;
        return length && units == DisplayUnits.METRIC ? MILLIMETRES : this;
    }

    /**
     * A length of the file as a job of those units shows it; anything else as it stands. What was written in the units shown keeps its own
     * form, so that nothing is rounded by being looked at.
     */
    public String shown(String written, DisplayUnits units) {
        if (this != INCHES && this != FEET) return written;
        boolean metric = written.strip().endsWith("m");
        if (metric == (units == DisplayUnits.METRIC)) return written;
        return LengthText.offset(written).value().map(units::length).orElse(written);
    }

    public static Optional<Unit> of(String name) {
        for (Unit unit : values()) if (unit.name().equals(name)) return Optional.of(unit);
        return Optional.empty();
    }
}
