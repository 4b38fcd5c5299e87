package plumbleaf.engine.job;

/** Which way a gate swings, seen from outside: in is away from the viewer. */
public enum SwingWay {
    IN("in"),
    OUT("out");

    private final String key;

    SwingWay(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }

    public SwingWay other() {
        return this == IN ? OUT : IN;
    }
}
