package plumbleaf.engine.job;

/** Which side shows the finished face. */
public enum FinishedFace {
    IN("in"),
    OUT("out"),
    BOTH("both");

    private final String key;

    FinishedFace(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
