package plumbleaf.engine.line;

/** What a post does in the fence. */
public enum PostRole {
    LINE("line"),
    END("end"),
    CORNER("corner"),
    GATE("gate"),
    WALL("wall");

    private final String key;

    PostRole(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
