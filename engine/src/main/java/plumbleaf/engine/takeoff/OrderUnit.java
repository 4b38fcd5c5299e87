package plumbleaf.engine.takeoff;

import java.util.Optional;

/** What a supplier counts in. */
public enum OrderUnit {
    EACH("each"),
    BOX("box"),
    POUND("lb"),
    STICK("stick"),
    BAG("bag"),
    YARD("yard"),
    ROLL("roll"),
    PAIL("pail"),
    CAN("can"),
    SHEET("sheet");

    private final String key;

    OrderUnit(String key) {
        this.key = key;
    }

    /** As files hold it and people read it. */
    public String key() {
        return key;
    }

    public static Optional<OrderUnit> of(String key) {
        for (OrderUnit unit : values()) {
            if (unit.key.equals(key)) return Optional.of(unit);
        }
        return Optional.empty();
    }
}
