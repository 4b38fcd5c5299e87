package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.section.Section;

/**
 * A post at grade, under every combination.
 *
 * @param governing the combination with the greatest utilisation
 * @param utilisation of that one, whatever the basis
 * @param findings on the customary basis a failure under wind is a caution, one under dead and live load stays a must-fix
 */
public record PostCheck(CombinedAction governing, double utilisation, List<Finding> findings) {
    public PostCheck {
        findings = List.copyOf(findings);
    }

    /**
     * @param height of the post above grade
     * @param actions at grade; not empty
     */
    public static PostCheck of(
            String part, PostStock stock, Length height, List<CombinedAction> actions, DesignBasis basis) {
        PostStrength section = PostStrength.of(stock);
        List<CombinedAction> still =
                actions.stream().filter(one -> !one.combination().hasWind()).toList();
        List<CombinedAction> windy =
                actions.stream().filter(one -> one.combination().hasWind()).toList();
        List<Finding> findings = new ArrayList<>();
        if (!still.isEmpty()) findings.add(finding("post.strength", Severity.MUST_FIX, part, stock, height, still));
        if (!windy.isEmpty()) {
            Severity failed = basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION;
            findings.add(finding("post.wind", failed, part, stock, height, windy));
        }
        stock.match(steel -> vouched(part, steel), wood -> Optional.<Finding>empty())
                .ifPresent(findings::add);
        CombinedAction governing = worst(section, height, actions);
        return new PostCheck(governing, section.ratio(governing, height), findings);
    }

    private static Optional<Finding> vouched(String part, Section section) {
        if (section.yieldIsVouchedFor()) return Optional.empty();
        return Optional.of(Checked.note(
                "post.yield",
                Severity.CAUTION,
                part,
                "Post " + part + ": nobody guarantees the yield of " + section.name() + "; "
                        + DecimalText.upTo(section.yieldStress().inKsi(), 1)
                        + " ksi is assumed. Ask the mill or the yard for a certificate.",
                Basis.judgement("assumed yield")));
    }

    private static CombinedAction worst(PostStrength section, Length height, List<CombinedAction> actions) {
        return Ties.most(actions, one -> section.ratio(one, height));
    }

    private static Finding finding(
            String id, Severity failed, String part, PostStock stock, Length height, List<CombinedAction> actions) {
        PostStrength strength = PostStrength.of(stock);
        CombinedAction worst = worst(strength, height, actions);
        double ratio = strength.ratio(worst, height);
        String message = "Post " + part + ", " + stock.name() + ": "
                + DecimalText.whole(worst.action().size().inPoundFeet()) + " lb-ft at grade (" + worst.name() + "), "
                + DecimalText.fixed(ratio, 2) + " of what it may carry.";
        return Checked.of(id, failed, part, message, strength.clause(), Measure.demand(ratio, 1, ""));
    }
}
