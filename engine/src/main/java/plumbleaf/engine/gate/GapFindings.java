package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;

/** Whether a leaf has room to turn in its opening: latch, nose, heel, and what the gaps must hold besides. */
final class GapFindings {
    private GapFindings() {}

    static List<Finding> ofLeaf(String part, GateAsk ask, SwingAsk swing) {
        List<Finding> findings = new ArrayList<>();
        Length sweep = noseSweep(swing);
        DisplayUnits display = ask.display();
        findings.add(nose(part, ask.gate(), sweep, display));
        findings.add(stack(
                "gate.latch-stack",
                part,
                "latch gap",
                ask.gate().leaf().latchGap(),
                GapStack.atLatch(sweep, swing.outline().width(), posts(ask.gate())),
                display));
        findings.add(stack(
                "gate.hinge-stack",
                part,
                "hinge gap",
                ask.gate().leaf().hingeGap(),
                GapStack.atHinge(posts(ask.gate())),
                display));
        findings.add(heel(part, ask, swing));
        findings.add(turns(part, swing));
        findings.add(grip(part, swing, display));
        return findings;
    }

    private static GapStack.Posts posts(Gate gate) {
        if (!gate.asSet().isEmpty()) return GapStack.Posts.MEASURED;
        boolean before = gate.release().match(priced -> false, hold -> false, released -> released.beforePosts());
        return before ? GapStack.Posts.BUILT_BEFORE : GapStack.Posts.PLANNED;
    }

    static Finding latchGap(Gate gate, LatchModel latch, DisplayUnits display) {
        double gap = gate.leaf().latchGap().inches();
        boolean wide = gap > latch.greatest().inches();
        boolean fits = !wide && gap >= latch.least().inches();
        Measure measure = wide
                ? Measure.demand(gap, latch.greatest().inches(), "in")
                : Measure.provided(gap, latch.least().inches(), "in");
        String range = display.length(latch.least()) + " to " + display.length(latch.greatest());
        return new Checked(
                "gate.latch-gap",
                fits ? Severity.PASS : Severity.MUST_FIX,
                gate.id(),
                gate.id() + ": the latch gap of " + display.length(gap) + (fits ? " suits" : " does not suit") + " the "
                        + latch.name() + ", which takes " + range + ".",
                Basis.job("range of the latch picked"),
                Optional.of(measure),
                List.of());
    }

    /**
     * Room for the nose: the corner of the latch edge on the side away from the swing turns on {@code sqrt(r2 + e2)}, e from the pin to that face, and needs
     * that much less r beyond the leaf's edge. Source: plane geometry. Check: GapFindingsTest.
     */
    static Length noseSweep(SwingAsk swing) {
        double r = swing.outline().latchEdge().inches();
        double behind = swing.hinge().swingOffset().inches() - leastFace(swing);
        return Length.inches(behind <= 0 ? 0 : Math.sqrt(r * r + behind * behind) - r);
    }

    private static Finding nose(String part, Gate gate, Length sweep, DisplayUnits display) {
        double gap = gate.leaf().latchGap().inches();
        return Checked.of(
                "gate.nose",
                Severity.MUST_FIX,
                part,
                part + ": as it opens, the latch edge needs " + display.length(sweep) + " of the latch gap of "
                        + display.length(gap) + ".",
                Basis.clause("plane geometry: the back corner turns on a longer radius"),
                Measure.demand(sweep.inches(), gap, "in"));
    }

    private static Finding stack(
            String id, String part, String gap, Length provided, GapStack stack, DisplayUnits display) {
        StringBuilder words = new StringBuilder();
        for (GapStack.Part each : stack.parts()) {
            if (words.length() > 0) words.append(" + ");
            words.append(each.name()).append(' ').append(display.length(each.takes()));
        }
        Length needed = stack.needed();
        boolean fits = needed.compareTo(provided) <= 0;
        return Checked.of(
                id,
                Severity.CAUTION,
                part,
                part + ": the " + gap + " of " + display.length(provided) + (fits ? " holds " : " is too small for ")
                        + words + " = " + display.length(needed) + ".",
                Basis.commonPractice("a gap is a stack of tolerances"),
                Measure.demand(needed.inches(), provided.inches(), "in"));
    }

    private static Finding heel(String part, GateAsk ask, SwingAsk swing) {
        Angle meets = meets(swing, swing.hinge(), swing.outline().hingeEdge().inches());
        boolean clears = meets.compareTo(swing.opens()) >= 0;
        Checked finding = Checked.of(
                "gate.heel",
                Severity.MUST_FIX,
                part,
                clears
                        ? part + ": the heel of the leaf clears its post as it opens."
                        : part + ": its heel meets the post " + degrees(meets) + " open. Take a hinge whose pin stands"
                                + " further off on the swing side, swing it the other way, or keep the boards back from"
                                + " the hinge edge.",
                Basis.clause("plane geometry"),
                Measure.provided(meets.inDegrees(), swing.opens().inDegrees(), "deg"));
        return clears ? finding : finding.withRemedies(otherHinges(ask, swing));
    }

    /** Hinges of the catalogue that let the leaf round, the nearest in kind first. */
    private static List<Remedy> otherHinges(GateAsk ask, SwingAsk swing) {
        List<Remedy> found = new ArrayList<>();
        double gap = ask.gate().leaf().hingeGap().inches();
        double thick = CladdingFaces.frameThickness(swing.parts().frame()).inches();
        for (HingeModel hinge : ask.hingesToTry()) {
            double edge = gap - hinge.pinOffset().inches();
            if (thick < hinge.fixing().gripLeast().inches()
                    || thick > hinge.fixing().gripMost().inches()
                    || edge < -hinge.pinOffset().inches()
                    || hinge.pin().opens().compareTo(swing.opens()) < 0
                    || meets(swing, hinge, edge).compareTo(swing.opens()) < 0) continue;
            found.add(new Remedy(
                    "other-hinge",
                    "hang it on the " + hinge.name() + ": it clears to " + degrees(swing.opens()),
                    OptionalDouble.of(1),
                    Optional.empty(),
                    Optional.of("gates[" + ask.gate().id() + "].hinges.model=" + hinge.id())));
        }
        return found;
    }

    private static Angle meets(SwingAsk swing, HingeModel hinge, double hingeEdgeIn) {
        return Heel.contact(swing.parts().hingePost(), hingeEdgeIn, leadingFace(swing), hinge.pin(), swing.opens());
    }

    /** How far round the hinge itself goes. */
    private static Finding turns(String part, SwingAsk swing) {
        Angle most = swing.hinge().pin().opens();
        return Checked.of(
                "hinge.opens",
                Severity.MUST_FIX,
                part,
                part + ": the " + swing.hinge().name() + " turns " + degrees(most) + "; the leaf is to open "
                        + degrees(swing.opens()) + ".",
                Basis.job("range of the hinge picked; " + swing.hinge().source()),
                Measure.demand(swing.opens().inDegrees(), most.inDegrees(), "deg"));
    }

    private static Finding grip(String part, SwingAsk swing, DisplayUnits display) {
        HingeModel hinge = swing.hinge();
        double thick = CladdingFaces.frameThickness(swing.parts().frame()).inches();
        double least = hinge.fixing().gripLeast().inches();
        double most = hinge.fixing().gripMost().inches();
        boolean thin = thick < least;
        boolean fits = !thin && thick <= most;
        return new Checked(
                "hinge.grip",
                fits ? Severity.PASS : Severity.MUST_FIX,
                part,
                part + ": its frame is " + display.length(thick) + " thick; the " + hinge.name() + " takes "
                        + display.length(least) + " to " + display.length(most) + ".",
                Basis.job("range of the hinge picked; " + hinge.source()),
                Optional.of(thin ? Measure.provided(thick, least, "in") : Measure.demand(thick, most, "in")),
                List.of());
    }

    private static double leadingFace(SwingAsk swing) {
        double leading = Double.NEGATIVE_INFINITY;
        for (LowStrip strip : strips(swing)) leading = Math.max(leading, strip.farIn());
        return leading;
    }

    private static double leastFace(SwingAsk swing) {
        double behind = Double.POSITIVE_INFINITY;
        for (LowStrip strip : strips(swing)) behind = Math.min(behind, strip.nearIn());
        return behind;
    }

    private static List<LowStrip> strips(SwingAsk swing) {
        SwingAxes axes =
                SwingAxes.of(swing.opening(), swing.hand(), swing.hinge().pin());
        return CladdingFaces.strips(swing.outline(), swing.parts(), axes.viewerSign());
    }

    private static String degrees(Angle angle) {
        return DecimalText.upTo(angle.inDegrees(), 0) + " degrees";
    }
}
