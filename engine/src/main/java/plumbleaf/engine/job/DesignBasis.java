package plumbleaf.engine.job;

/** What the build must satisfy. */
public enum DesignBasis {
    /** Code wind on code soil values must pass. */
    ENGINEERED("engineered"),
    /** The usual build of the trade, with the gust at which each part reaches its limits printed. */
    CUSTOMARY("customary");

    private final String key;

    DesignBasis(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
