package plumbleaf.engine.sag;

/** How the leaf stands in a load case. */
public enum LeafState {
    CLOSED("closed"),
    /** On its way, at the angle that is worst for the post. Nothing holds it, so it carries no steady wind. */
    WORST("worst"),
    OPEN("open");

    private final String key;

    LeafState(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
