package plumbleaf.engine.catalogue;

/** What keeps a fastener from rusting. */
public enum FastenerFinish {
    STAINLESS("stainless"),
    HOT_DIP("hot-dip"),
    PLATED("plated"),
    BARE("bare");

    private final String key;

    FastenerFinish(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
