package plumbleaf.engine.ground;

/** How the tape lay from one shot to the next. */
public enum TapeLay {
    /** Nobody said: taken as level. */
    UNSAID("", false),
    LEVEL("level", false),
    /** Along the ground. */
    SLOPE("slope", true);

    private final String key;
    private final boolean isAlongGround;

    TapeLay(String key, boolean isAlongGround) {
        this.key = key;
        this.isAlongGround = isAlongGround;
    }

    /** As files hold it; empty where nobody said. */
    public String key() {
        return key;
    }

    public boolean isAlongGround() {
        return isAlongGround;
    }
}
