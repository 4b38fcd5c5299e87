package plumbleaf.web.page;

import java.util.Optional;

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

    /** What was typed, with this unit where it had none. */
    public String complete(String typed) {
        String text = typed.strip();
        return text.matches("[-+]?(\\d+[ -])?\\d*([./]\\d+)?") && !text.isEmpty() ? text + ending : text;
    }

    public static Optional<Unit> of(String name) {
        for (Unit unit : values()) if (unit.name().equals(name)) return Optional.of(unit);
        return Optional.empty();
    }
}
