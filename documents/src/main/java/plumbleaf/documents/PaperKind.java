package plumbleaf.documents;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.PacketPaper;

/**
 * The kinds of paper, in the order of the packet, and whose hands each is for. A paper that is of no kind named
 * here stays in the office, so one that somebody adds later is closed to shop, crew and customer until it is opened on purpose.
 */
public enum PaperKind {
    SITE_PLAN("site-plan", "Site plan", Hands.BOTH),
    PROFILE("profile", "Unrolled profile", Hands.BOTH),
    GATE("gate", "Gate, shop drawing, cut and drill list", Hands.BOTH),
    TEMPLATES("templates", "Full-size templates", Hands.CREW),
    STAKE_OUT("stake-out", "Stake-out and post schedule", Hands.CREW),
    CONCRETE("concrete", "Concrete order", Hands.CREW),
    PERMIT("permit", "Permit and association sheet", Hands.BOTH),
    LOCATE("locate", "Locate request", Hands.BOTH),
    TEAR_OUT("tear-out", "Tear-out ticket", Hands.BOTH),
    ORDER("order", "Material order", Hands.OFFICE),
    RECEIVING("receiving", "Receiving", Hands.CREW),
    CUT_PLANS("cut-plans", "Cut plans", Hands.CREW),
    LOAD("load-list", "Load list", Hands.CREW),
    CREW("crew", "Crew sheet", Hands.CREW),
    AS_BUILT("as-built", "As-built record", Hands.BOTH),
    HAND_OVER("hand-over", "Hand-over", Hands.BOTH),
    PROPOSAL("proposal", "Proposal", Hands.CUSTOMER),
    CHANGE_ORDER("change-order", "Change order", Hands.CUSTOMER),
    BILL("bill", "Bill", Hands.OFFICE),
    CALCULATIONS("calculations", "Calculation book", Hands.OFFICE),
    CARE_CARD("care-card", "Care card", Hands.BOTH);

    /** Who holds a paper beside the office, which holds them all. No price is on any paper for shop and crew. */
    private enum Hands {
        OFFICE,
        CREW,
        CUSTOMER,
        BOTH
    }

    private final String file;
    private final String title;
    private final Hands hands;

    PaperKind(String file, String title, Hands hands) {
        this.file = file;
        this.title = title;
        this.hands = hands;
    }

    /** What its file's name is or begins with: {@code site-plan}. */
    public String file() {
        return file;
    }

    /** As a bookmark says it. */
    public String title() {
        return title;
    }

    public boolean isForCrew() {
        return hands == Hands.CREW || hands == Hands.BOTH;
    }

    public boolean isForCustomer() {
        return hands == Hands.CUSTOMER || hands == Hands.BOTH;
    }

    /** Whether a packet's list means it by that word. */
    public boolean isOf(PacketPaper paper) {
        return file.equals(paper.key());
    }

    /** The kind of a file of the packet: {@code gate-G1a.svg} is of the gate. */
    public static Optional<PaperKind> of(String fileName) {
        int dot = fileName.lastIndexOf('.');
        String plain = dot < 0 ? fileName : fileName.substring(0, dot);
        return List.of(values()).stream()
                .filter(kind -> plain.equals(kind.file) || (kind.isMany() && plain.startsWith(kind.file + "-")))
                .findFirst();
    }

    /** Whether there may be several of it, told apart by what follows the name. */
    private boolean isMany() {
        return this == GATE || this == PROFILE || this == TEMPLATES;
    }
}
