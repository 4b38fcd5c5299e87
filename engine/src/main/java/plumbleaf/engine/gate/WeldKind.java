package plumbleaf.engine.gate;

/** The kind of a weld. */
public enum WeldKind {
    /** Between the flush faces of a miter. */
    GROOVE("square groove"),
    /** In the corner between two faces. */
    FILLET("fillet"),
    /** Against the round corner of a tube as wide as the one it meets. */
    FLARE_BEVEL("flare bevel");

    private final String words;

    WeldKind(String words) {
        this.words = words;
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
