package plumbleaf.engine.job;

/** How the tape was held. */
public enum Taped {
    /** Level: the length counts in plan. */
    LEVEL("level"),
    /** Along the ground: the plan length is shorter. */
    SLOPE("slope");

    private final String key;

    Taped(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
