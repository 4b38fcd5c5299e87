package plumbleaf.engine.takeoff;

/** Where a material belongs on the order and in the price. */
public enum PartGroup {
    POSTS("posts"),
    FENCE("fence"),
    GATE("gate"),
    FOOTINGS("footings"),
    HARDWARE("hardware"),
    CONSUMABLES("consumables"),
    FINISH("finish");

    private final String key;

    PartGroup(String key) {
        this.key = key;
    }

    /** As files hold it and people read it. */
    public String key() {
        return key;
    }
}
