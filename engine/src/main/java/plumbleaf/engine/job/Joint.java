package plumbleaf.engine.job;

/** How frame members meet at the corners. */
public enum Joint {
    /** Both ends cut at half the corner. */
    MITERED("mitered"),
    /** Stiles run through, rails butt between them. */
    BUTTED("butted"),
    /** The end is cut to the round of the other tube. */
    COPED("coped");

    private final String key;

    Joint(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
