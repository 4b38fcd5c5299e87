package plumbleaf.engine.job;

/** Left or right: of a walker along a run, or of someone outside facing a closed gate. */
public enum Side {
    LEFT("left"),
    RIGHT("right");

    private final String key;

    Side(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    public Side other() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
