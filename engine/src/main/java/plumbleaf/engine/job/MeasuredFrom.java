package plumbleaf.engine.job;

/** Where a height is measured from. */
public enum MeasuredFrom {
    LOWER_SIDE("lower-side"),
    HIGHER_SIDE("higher-side"),
    INSIDE("inside"),
    OUTSIDE("outside");

    private final String key;

    MeasuredFrom(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
