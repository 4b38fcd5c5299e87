package plumbleaf.engine.job;

/** What a place is used for; it decides which rules apply. */
public enum Use {
    /** People on foot. */
    WALK("walk"),
    /** Vehicles. */
    DRIVE("drive"),
    /** Closes off a pool. */
    POOL("pool"),
    /** Opened by a machine, now or later. */
    POWERED("powered"),
    /** Beside a public way. */
    PUBLIC_WAY("public-way"),
    /** Keeps people from a drop. */
    GUARD("guard"),
    /** Keeps animals in. */
    ANIMAL("animal");

    private final String key;

    Use(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
