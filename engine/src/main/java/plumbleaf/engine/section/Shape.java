package plumbleaf.engine.section;

/** The outline of a steel section. */
public enum Shape {
    ROUND("round"),
    SQUARE("square"),
    RECTANGULAR("rectangular");

    private final String key;

    Shape(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
