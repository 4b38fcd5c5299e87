package plumbleaf.engine.takeoff;

import java.util.Optional;

/** What a need is measured in before it is rounded up to what is sold. */
public enum NetUnit {
    PIECES("pieces"),
    FEET("ft"),
    SQUARE_FEET("ft2"),
    CUBIC_FEET("ft3"),
    POUNDS("lb"),
    GALLONS("gal");

    private final String key;

    NetUnit(String key) {
        this.key = key;
    }

    /** As files hold it and people read it. */
    public String key() {
        return key;
    }

    public static Optional<NetUnit> of(String key) {
        for (NetUnit unit : values()) {
            if (unit.key.equals(key)) return Optional.of(unit);
        }
        return Optional.empty();
    }
}
