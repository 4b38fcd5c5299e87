package plumbleaf.engine.finding;

/** How bad a finding is, worst first. */
public enum Severity {
    MUST_FIX("must-fix", "must fix"),
    CANNOT_SAY("cannot-say", "cannot say"),
    CAUTION("caution", "caution"),
    PASS("pass", "passes");

    private final String key;
    private final String words;

    Severity(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** As files hold it: {@code must-fix}. */
    public String key() {
        return key;
    }

    /** As people read it: {@code must fix}. */
    public String words() {
        return words;
    }
}
