package plumbleaf.engine.catalogue;

/** How the wheels of a slide gate hold its tubes. */
public enum RollerWay {
    /** A cage on the bottom tube, with wheels under, over and beside it; guide wheels keep the top tube upright. */
    BOTTOM("bottom", false),
    /** The same on the top tube, with guide wheels at the bottom one. */
    TOP("top", true),
    /** Grooved wheels on pipe: one under the bottom tube, one over the top tube. What presses rests on the lower, what lifts bears on the upper. */
    GROOVED("grooved", false);

    private final String key;
    private final boolean onTop;

    RollerWay(String key, boolean onTop) {
        this.key = key;
        this.onTop = onTop;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    /** Whether the top tube bears on its wheel, where the leaf presses down or lifts there. */
    public boolean bearsOnTop(boolean lifts) {
        return this == GROOVED ? lifts : onTop;
    }
}
