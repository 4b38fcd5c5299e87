package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * A post at grade, under every combination.
 *
 * @param governing the combination with the greatest utilisation
 * @param utilisation of that one, whatever the basis
 * @param findings on the customary basis a failure under wind is a caution, one under dead and live load stays a must-fix
 */
public record PostCheck(CombinedAction governing, double utilisation, List<Finding> findings) {
    private static final Basis CLAUSE = Basis.clause("AISC 360-22 H1.1, H3.2 (ASD, omega 1.67)");

    public PostCheck {
        findings = List.copyOf(findings);
    }

    /**
     * @param height of the post above grade
     * @param actions at grade; not empty
     */
    public static PostCheck of(
            String part, Section section, Length height, List<CombinedAction> actions, DesignBasis basis) {
        List<CombinedAction> still =
                actions.stream().filter(one -> !one.combination().hasWind()).toList();
        List<CombinedAction> windy =
                actions.stream().filter(one -> one.combination().hasWind()).toList();
        List<Finding> findings = new ArrayList<>();
        if (!still.isEmpty()) findings.add(finding("post.strength", Severity.MUST_FIX, part, section, height, still));
        if (!windy.isEmpty()) {
            Severity failed = basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION;
            findings.add(finding("post.wind", failed, part, section, height, windy));
        }
        if (!section.yieldIsVouchedFor())
            findings.add(Checked.note(
                    "post.yield",
                    Severity.CAUTION,
                    part,
                    "Post " + part + ": nobody guarantees the yield of " + section.name() + "; "
                            + DecimalText.upTo(section.yieldStress().inKsi(), 1)
                            + " ksi is assumed. Ask the mill or the yard for a certificate.",
                    Basis.judgement("assumed yield")));
        CombinedAction governing = worst(section, height, actions);
        return new PostCheck(governing, Interaction.ratio(section, governing.action(), height), findings);
    }

    private static CombinedAction worst(Section section, Length height, List<CombinedAction> actions) {
        CombinedAction worst = actions.get(0);
        for (CombinedAction one : actions) {
            if (Interaction.ratio(section, one.action(), height) > Interaction.ratio(section, worst.action(), height))
                worst = one;
        }
        return worst;
    }

    private static Finding finding(
            String id, Severity failed, String part, Section section, Length height, List<CombinedAction> actions) {
        CombinedAction worst = worst(section, height, actions);
        double ratio = Interaction.ratio(section, worst.action(), height);
        String message = "Post " + part + ", " + section.name() + ": "
                + DecimalText.whole(worst.action().size().inPoundFeet()) + " lb-ft at grade (" + worst.name() + "), "
                + DecimalText.fixed(ratio, 2) + " of what it may carry.";
        return Checked.of(id, failed, part, message, CLAUSE, Measure.demand(ratio, 1, ""));
    }
}
