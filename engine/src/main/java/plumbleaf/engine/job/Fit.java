package plumbleaf.engine.job;

/** How the fence follows the ground. */
public enum Fit {
    /** Rails follow the grade, pickets stay plumb. */
    RACKED("racked"),
    /** Level bays with steps between. */
    STEPPED("stepped"),
    /** One level top, bottoms cut to the ground. */
    LEVEL_TOP("level-top"),
    /** Each line of sight racked where its panels and the gap allow, else stepped; it changes at corners and gates only. */
    MIXED("mixed");

    private final String key;

    Fit(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
