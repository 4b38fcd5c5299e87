package plumbleaf.engine.footing;

/** Why a footing is as deep as it is. */
public enum DepthCause {
    FROST("frost"),
    LATERAL("lateral"),
    DROP("drop"),
    HEAVE("heave"),
    MINIMUM("minimum"),
    GIVEN("given");

    private final String key;

    DepthCause(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
