package plumbleaf.engine.job;

/** Risk category of ASCE 7: I for an ordinary fence, II by a public way. */
public enum RiskCategory {
    I("I"),
    II("II"),
    III("III");

    private final String key;

    RiskCategory(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
