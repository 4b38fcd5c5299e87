package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.LatchLive;

/** Judges the sag budget: what the blocks let go, what the latch and the eye allow afterwards, in soft soil. */
final class SagFindings {
    private SagFindings() {}

    static List<Finding> of(String gate, GateSag sag, SagLimits limits, DisplayUnits display) {
        return List.of(
                release(gate, sag, limits, display),
                latch(gate, sag, limits, display),
                eye(gate, sag, limits, display),
                live(gate, sag.latchLive(), limits, display));
    }

    private static Finding release(String gate, GateSag sag, SagLimits limits, DisplayUnits display) {
        double soft = sag.soil().soft().inches() - sag.byCause().leaf().inches();
        String message = gate + ": the latch corner falls " + display.length(sag.hangAllowance())
                + " when the blocks are pulled, up to "
                + display.length(soft) + " in soft soil; a good hang is within " + display.length(limits.release())
                + ". Block it that much high.";
        return Checked.of(
                "sag.release",
                Severity.CAUTION,
                gate,
                message,
                Basis.commonPractice("1/8 in. at a 4 ft leaf, 1/4 in. at 8 ft"),
                Measure.demand(soft, limits.release().inches(), "in"));
    }

    private static Finding latch(String gate, GateSag sag, SagLimits limits, DisplayUnits display) {
        double after = sag.afterHangingSoft().inches();
        String message = gate + ": in the years after hanging the latch corner may drop " + display.length(after)
                + " more in soft soil; the latch takes " + display.length(limits.latch()) + " either way.";
        return Checked.of(
                "sag.latch",
                Severity.MUST_FIX,
                gate,
                message,
                Basis.judgement("creep, wear, season and a person's residual"),
                Measure.demand(after, limits.latch().inches(), "in"));
    }

    private static Finding eye(String gate, GateSag sag, SagLimits limits, DisplayUnits display) {
        double after = sag.afterHangingSoft().inches();
        String message = gate + ": " + display.length(after) + " after hanging against the "
                + display.length(limits.eye()) + " that the eye sees over a leaf.";
        return Checked.of(
                "sag.eye",
                Severity.CAUTION,
                gate,
                message,
                Basis.commonPractice("1/4 in. over the leaf"),
                Measure.demand(after, limits.eye().inches(), "in"));
    }

    private static Finding live(String gate, LatchLive live, SagLimits limits, DisplayUnits display) {
        String message = gate + ": under a " + live.from() + " the latch moves "
                + display.length(live.size()) + "; it should stay engaged, and takes "
                + display.length(limits.latch()) + " either way.";
        return Checked.of(
                "sag.live",
                Severity.CAUTION,
                gate,
                message,
                Basis.judgement("the latch stays engaged under whatever comes and goes"),
                Measure.demand(live.size().inches(), limits.latch().inches(), "in"));
    }
}
