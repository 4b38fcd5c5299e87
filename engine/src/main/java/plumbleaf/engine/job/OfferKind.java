package plumbleaf.engine.job;

/** What an option is to the one who chooses. */
public enum OfferKind {
    /** Another build of the whole job, instead of the one in the file: good, better, best. */
    BUILD("build"),
    /** Something more, or less, that can be ticked beside any other. */
    EXTRA("extra");

    private final String key;

    OfferKind(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
