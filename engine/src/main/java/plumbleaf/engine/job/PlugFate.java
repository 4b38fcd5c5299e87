package plumbleaf.engine.job;

/** What becomes of the concrete of an old post. */
public enum PlugFate {
    /** It stays in the ground: no new hole meets it. */
    LEAVE("leave"),
    /** It is pulled and hauled off. */
    PULL("pull");

    private final String key;

    PlugFate(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
