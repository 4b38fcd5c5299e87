package plumbleaf.engine.job;

/** Edition of ASCE 7. */
public enum WindEdition {
    /** ASCE 7-16: the directionality factor sits in the velocity pressure. */
    ASCE_7_16("7-16"),
    /** ASCE 7-22: it sits in the force. */
    ASCE_7_22("7-22");

    private final String key;

    WindEdition(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
