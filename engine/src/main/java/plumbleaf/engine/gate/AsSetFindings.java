package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;

/** What standing posts that were measured have to say about the leaf. */
final class AsSetFindings {
    /** Readings that contradict each other by more are taken again. Common practice, no source. */
    private static final Length CLOSURE = Length.inches(0.125);

    /** A gap that widens by more than this over a leaf's height shows. Common practice, no source. */
    private static final Length TAPER = Length.inches(0.25);

    /** More packing than this under a hinge is no longer a packer: another bracket, or a straightened post. Judgement. */
    private static final Length THICKEST = Length.inches(0.5);

    /** A push at the latch edge that a hand calls "it swings by itself". Judgement. */
    private static final double DRIFT_LB = 1;

    private AsSetFindings() {}

    static List<Finding> of(Leaf leaf, AsSetFit fit, Angle opens, GateAsk ask) {
        List<Finding> findings = new ArrayList<>(ofPair(leaf, fit, opens, ask));
        findings.add(latchRange(leaf, fit, ask.parts().latch(), ask.display()));
        findings.add(taper(leaf, fit, ask.display()));
        return findings;
    }

    /** Of one leaf of a pair: it meets the other leaf, not a post. */
    static List<Finding> ofPair(Leaf leaf, AsSetFit fit, Angle opens, GateAsk ask) {
        DisplayUnits display = ask.display();
        List<Finding> findings = new ArrayList<>();
        findings.add(Checked.of(
                "as-set.closes",
                Severity.MUST_FIX,
                leaf.id(),
                leaf.id() + ": openings and leans as measured contradict each other by "
                        + display.length(fit.misclosure()) + ". "
                        + (fit.misclosure().compareTo(CLOSURE) > 0 ? "Measure all of them again." : "They agree."),
                Basis.commonPractice("1/8 in. between tape and level"),
                Measure.demand(fit.misclosure().inches(), CLOSURE.inches(), "in")));
        findings.add(packing(leaf, fit, ask.parts().hinge(), display));
        findings.add(drift(leaf, fit, opens));
        return findings;
    }

    private static Finding latchRange(Leaf leaf, AsSetFit fit, LatchModel latch, DisplayUnits display) {
        Length widest = fit.latchGaps().get(0);
        for (Length gap : fit.latchGaps()) if (gap.compareTo(widest) > 0) widest = gap;
        return Checked.of(
                "as-set.latch",
                Severity.MUST_FIX,
                leaf.id(),
                leaf.id() + ": between the posts as they stand the latch gap is "
                        + display.length(fit.latchGaps().get(2)) + " at the top, "
                        + display.length(fit.latchGaps().get(1)) + " in the middle, "
                        + display.length(fit.latchGaps().get(0)) + " at the bottom; the " + latch.name()
                        + " takes up to "
                        + display.length(latch.greatest()) + ".",
                Basis.job("range of the latch picked"),
                Measure.demand(widest.inches(), latch.greatest().inches(), "in"));
    }

    private static Finding taper(Leaf leaf, AsSetFit fit, DisplayUnits display) {
        double most = 0;
        double least = Double.POSITIVE_INFINITY;
        for (Length gap : fit.latchGaps()) {
            most = Math.max(most, gap.inches());
            least = Math.min(least, gap.inches());
        }
        return Checked.of(
                "as-set.taper",
                Severity.CAUTION,
                leaf.id(),
                leaf.id() + ": a plumb leaf leaves a latch gap that widens by " + display.length(most - least)
                        + ". Straighten the post, or say that it may show.",
                Basis.commonPractice("a taper of 1/4 in. is seen"),
                Measure.demand(most - least, TAPER.inches(), "in"));
    }

    private static Finding packing(Leaf leaf, AsSetFit fit, HingeModel hinge, DisplayUnits display) {
        double most = 0;
        for (AsSetFit.Packer packer : fit.packers())
            most = Math.max(
                    most,
                    Math.max(packer.along().inches(), Math.abs(packer.inside().inches())));
        double limit = Math.max(THICKEST.inches(), hinge.adjusts().inches());
        return Checked.of(
                "as-set.packers",
                Severity.MUST_FIX,
                leaf.id(),
                leaf.id() + ": to stand the pins plumb a hinge is packed or set over by up to " + display.length(most)
                        + "; up to " + display.length(limit) + " will do.",
                Basis.judgement("packers to 1/2 in., or what the hinge adjusts"),
                Measure.demand(most, limit, "in"));
    }

    private static Finding drift(Leaf leaf, AsSetFit fit, Angle opens) {
        double weight = leaf.weight().wet().pounds();
        double centre = leaf.weight().centreOfGravity().r().inches();
        double worst = 0;
        double at = 0;
        for (int i = 0; i <= 36; i++) {
            double q = opens.radians() * i / 36;
            double here = fit.driftLbIn(leaf.hand(), weight, centre, q);
            if (Math.abs(here) > Math.abs(worst) + 1e-12) {
                worst = here;
                at = q;
            }
        }
        double push = Math.abs(worst) / leaf.outline().latchEdge().inches();
        String way = worst > 0 ? "opens" : "closes";
        return Checked.of(
                "as-set.drift",
                Severity.CAUTION,
                leaf.id(),
                leaf.id() + ": with its pins on the leaning post and no packers it " + way + " by itself with "
                        + DecimalText.fixed(push, 1) + " lb at the latch edge, "
                        + DecimalText.upTo(at * 180 / Math.PI, 0)
                        + " degrees open. Set the packers of the crew sheet and it stays where it is left.",
                Basis.judgement("W a times the lean of the pins"),
                Measure.demand(push, DRIFT_LB, "lb"));
    }
}
