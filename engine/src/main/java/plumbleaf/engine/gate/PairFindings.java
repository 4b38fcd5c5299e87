package plumbleaf.engine.gate;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.Side;

/** What is to be said of two leaves that meet. */
final class PairFindings {
    /** What the eye sees of one gap between pickets against the next: judgement. */
    private static final double GAP_SEEN_IN = 0.125;

    private PairFindings() {}

    /** Whether the pickets of one leaf carry on over the meeting gap into those of the other: the same gaps on both; empty where a leaf has none. */
    static List<Finding> rhythm(GateAsk ask, List<LeafHang> hangs) {
        Leaf a = hangs.get(0).leaf();
        Leaf b = hangs.get(1).leaf();
        if (a.pickets().isEmpty() || b.pickets().isEmpty()) return List.of();
        if (a.pickets().get(0).lying() || b.pickets().get(0).lying()) return List.of();
        double apart = Math.abs(a.picketGap().inches() - b.picketGap().inches());
        double between = ask.gate().leaf().latchGap().inches();
        String message = ask.gate().id() + ": its pickets stand "
                + ask.display().length(a.picketGap()) + " apart on " + a.id() + " and "
                + ask.display().length(b.picketGap()) + " on " + b.id() + ", and "
                + ask.display().length(between) + " where the leaves meet.";
        return List.of(Checked.of(
                "pair.rhythm",
                Severity.CAUTION,
                ask.gate().id(),
                message,
                Basis.judgement("an eighth of an inch between one gap and the next is seen"),
                Measure.demand(apart, GAP_SEEN_IN, "in")));
    }

    /**
     * Which leaf opens first. Pushed together both back corners come into the gap at once and need the sum of their sweeps; a stop strip on the other leaf keeps
     * the first one from opening second in any case. Source: plane geometry.
     *
     * @param leaves a, then b
     */
    static Finding order(GateAsk ask, GateKind.Pair kind, List<Gates.Hung> leaves) {
        Gates.Hung first = leaves.get(kind.active() == Side.LEFT ? 0 : 1);
        Gates.Hung other = leaves.get(kind.active() == Side.LEFT ? 1 : 0);
        double both = 0;
        for (Gates.Hung leaf : leaves) both += GapFindings.noseSweep(leaf.ask()).inches();
        double gap = ask.gate().leaf().latchGap().inches();
        boolean together = both <= gap && !kind.meeting().hasStrip();
        String why = kind.meeting().hasStrip()
                ? "the stop strip on " + other.part() + " is in its way otherwise"
                : "opened together their back corners need " + ask.display().length(both) + " of the gap of "
                        + ask.display().length(gap);
        String message = together
                ? ask.gate().id() + ": either leaf may open first; their back corners clear each other in the gap of "
                        + ask.display().length(gap) + "."
                : ask.gate().id() + ": " + first.part() + " opens first and closes last, since " + why + ".";
        return new Checked(
                "pair.order",
                Severity.PASS,
                ask.gate().id(),
                message,
                Basis.clause("plane geometry: the back corner turns on a longer radius"),
                Optional.of(Measure.demand(GapFindings.noseSweep(first.ask()).inches(), gap, "in")),
                List.of());
    }
}
