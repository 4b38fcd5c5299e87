package plumbleaf.engine.job;

/** How the edge of a mesh or sheet is held in its frame. */
public enum MeshEdge {
    /** Stitch-welded to a 1 x 1 x 1/8 angle all round, the angle welded into the frame. */
    ANGLE("angle"),
    /** Clamped to the frame under a 1 x 1/8 flat bar, bolted. */
    FLAT_BAR("flat-bar"),
    /** Welded to the frame's inner face, or tied where it is woven. */
    DIRECT("direct");

    private final String key;

    MeshEdge(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
