package plumbleaf.engine.job;

/** How dense sand or gravel is, or how firm clay or silt is. */
public enum SoilState {
    /** Sand: a bar goes in by hand. */
    LOOSE("loose"),
    /** Sand: digs with effort. */
    MEDIUM("medium"),
    /** Sand: needs a pick. */
    DENSE("dense"),
    /** Clay: the thumb goes in easily. */
    SOFT("soft"),
    /** Clay: the thumb goes in with effort. */
    FIRM("firm"),
    /** Clay: only the nail marks it. */
    STIFF("stiff");

    private final String key;

    SoilState(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
