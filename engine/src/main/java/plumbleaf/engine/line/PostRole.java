package plumbleaf.engine.line;

/** What a post does in the fence. */
public enum PostRole {
    LINE("line"),
    END("end"),
    CORNER("corner"),
    GATE("gate"),
    /** The rear roller post of a slide gate, beside the leaf's tail: the fence goes on past it. */
    ROLLER("roller"),
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
