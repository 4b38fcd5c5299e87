package plumbleaf.engine.sag;

/** Which way the wind blows in a load case. On an open leaf, in and out are against and along the leaf's own outer face. */
public enum WindWay {
    NONE("none", 0),
    /** From outside to inside. */
    IN("wind-in", -1),
    /** From inside to outside. */
    OUT("wind-out", 1);

    private final String key;
    private final int outward;

    WindWay(String key, int outward) {
        this.key = key;
        this.outward = outward;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    public int outward() {
        return outward;
    }
}
