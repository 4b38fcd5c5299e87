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
    private PairFindings() {}

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
