package plumbleaf.engine.support;

/** How an existing post feels when shaken by hand. */
public enum PostFeel {
    /** Does not move that one can see. */
    FIRM("firm"),
    /** Moves in its hole. */
    MOVES("moves"),
    /** Not tried. */
    UNKNOWN("unknown");

    private final String key;

    PostFeel(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
