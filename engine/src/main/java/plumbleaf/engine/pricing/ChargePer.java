package plumbleaf.engine.pricing;

import java.util.Optional;

/** What a charge is counted in. */
public enum ChargePer {
    JOB("job"),
    DAY("day on site"),
    TRIP("trip"),
    HOLE("hole"),
    TON("ton hauled off"),
    YARD("cubic yard of spoil"),
    /** As many as the job allows for; beyond them by the unit price. */
    ALLOWANCE("allowance");

    private final String key;

    ChargePer(String key) {
        this.key = key;
    }

    /** As files hold it and people read it. */
    public String key() {
        return key;
    }

    public static Optional<ChargePer> of(String key) {
        for (ChargePer per : values()) {
            if (per.key.equals(key)) return Optional.of(per);
        }
        return Optional.empty();
    }
}
