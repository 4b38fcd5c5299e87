package plumbleaf.engine.job;

/** The day from which the days of a notice are counted. */
public enum NoticeFrom {
    FIRST_WORK("first-work", "the first day of work"),
    LAST_WORK("last-work", "the last day of work");

    private final String key;
    private final String words;

    NoticeFrom(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    /** As people read it. */
    public String words() {
        return words;
    }
}
