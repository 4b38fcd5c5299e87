package plumbleaf.engine.gate;

/** How the two end cuts of a member lie to each other: what tells the saw hand whether to turn the piece over. */
public enum EndsTurn {
    /** Both cuts lean the same way: a parallelogram. Square ends count here. */
    PARALLEL("parallel"),
    /** They lean against each other: a trapezoid, both long points on one side. */
    OPPOSED("opposed");

    private final String key;

    EndsTurn(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
