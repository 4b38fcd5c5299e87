package plumbleaf.engine.job;

/** The kinds of paper that a packet is made of, in their usual order. */
public enum PacketPaper {
    SITE_PLAN("site-plan"),
    PROFILE("profile"),
    GATE("gate"),
    TEMPLATES("templates"),
    STAKE_OUT("stake-out"),
    CONCRETE("concrete"),
    PERMIT("permit"),
    LOCATE("locate"),
    TEAR_OUT("tear-out"),
    ORDER("order"),
    RECEIVING("receiving"),
    CUT_PLANS("cut-plans"),
    LOAD("load-list"),
    CREW("crew"),
    AS_BUILT("as-built"),
    HAND_OVER("hand-over"),
    PROPOSAL("proposal"),
    BILL("bill"),
    CALCULATIONS("calculations"),
    CARE_CARD("care-card");

    private final String key;

    PacketPaper(String key) {
        this.key = key;
    }

    /** As files hold it. */
    public String key() {
        return key;
    }
}
