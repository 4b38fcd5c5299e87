package plumbleaf.engine.job;

/** Between which corners a tension rod runs. */
public enum RodRuns {
    /** From the upper hinge corner to the lower latch corner: the leaf's own weight pulls it. */
    FROM_TOP_HINGE("from-top-hinge"),
    /** From the lower hinge corner to the upper latch corner: the leaf's own weight slackens it. */
    FROM_LOW_HINGE("from-low-hinge"),
    /** One each way. */
    BOTH("both");

    private final String key;

    RodRuns(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
