package plumbleaf.engine.job;

/** How open the ground round the site is, by ASCE 7. */
public enum Exposure {
    /** Suburbs, woods. */
    B("B"),
    /** Open country. */
    C("C"),
    /** Beside open water. */
    D("D");

    private final String key;

    Exposure(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
