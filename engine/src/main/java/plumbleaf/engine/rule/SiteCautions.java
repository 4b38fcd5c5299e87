package plumbleaf.engine.rule;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.LeafWeight;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;

/** What must be said before people dig, weld, lift and pour: always shown where it applies, never a pass. */
public final class SiteCautions {
    /** Two people hang a leaf above this; common practice, no source. */
    private SiteCautions() {}

    /**
     * Before any hole.
     *
     * @param ticketed whether a locate request is on file
     * @param privateLines whether the owner's own buried lines are marked
     */
    public static List<Finding> digging(boolean ticketed, boolean privateLines) {
        List<Finding> findings = new ArrayList<>();
        findings.add(note(
                "dig.locate",
                "site",
                (ticketed ? "Dig only inside the locate ticket's days. " : "No locate ticket is on file. ")
                        + "Have utilities located before digging: call 811 two to three business days ahead, and dig by hand inside 18 to 24 in. of a mark.",
                Basis.clause("state one-call law; Common Ground Alliance best practice 5.19; local law governs")));
        findings.add(note(
                "dig.private",
                "site",
                "Sprinklers, drains, pool and lighting lines are not marked by the locators"
                        + (privateLines
                                ? "; keep off the owner's lines on the plan."
                                : ": ask the owner and mark them."),
                Basis.commonPractice("private lines")));
        return List.copyOf(findings);
    }

    /** Wherever galvanized steel is welded or cut. */
    public static Finding zincFume(String part) {
        return note(
                "weld.zinc",
                part,
                "Galvanized steel gives off zinc fume when welded or cut: grind the zinc off the joint, stay out of the plume, use local exhaust or a"
                        + " P100 respirator, and keep a fire watch near dry wood.",
                Basis.clause(
                        "29 CFR 1910.1000 Table Z-1, zinc oxide fume 5 mg/m3; AWS Safety and Health Fact Sheet 25"));
    }

    /** A leaf to lift: two people above 50 lb. */
    public static Finding lifting(String part, Force leaf) {
        boolean two = leaf.compareTo(LeafWeight.ONE_PERSON) > 0;
        return note(
                "lift.leaf",
                part,
                "Leaf " + part + " weighs " + DecimalText.whole(leaf.pounds()) + " lb"
                        + (two
                                ? ": two people to hang it, and blocks under it."
                                : ": one person can hang it, on blocks."),
                Basis.commonPractice("two people above 50 lb"));
    }

    /** Wherever posts are set in concrete. */
    public static Finding bracing() {
        return note(
                "set.brace",
                "site",
                "Brace posts until the concrete has set; cover open holes; hang no leaf before the footing has cured. Pour bags low and upwind: the dust holds"
                        + " silica.",
                Basis.clause("29 CFR 1926.1153, silica; bracing and cure: common practice, no source"));
    }

    /** On every structural result. */
    public static Finding review() {
        return note(
                "review.engineer",
                "site",
                "Numbers here are for review, not an approval: where the jurisdiction asks for a licensed engineer, one must check and seal them. Local code"
                        + " governs.",
                Basis.clause("state licensing law"));
    }

    private static Finding note(String id, String part, String message, Basis basis) {
        return Checked.note(id, Severity.CAUTION, part, message, basis);
    }
}
