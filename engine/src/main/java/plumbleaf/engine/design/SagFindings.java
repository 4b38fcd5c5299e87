package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.IceDrop;
import plumbleaf.engine.sag.LatchLive;

/** Judges the sag budget: what the blocks let go, what the latch and the eye allow afterwards, in soft soil. */
final class SagFindings {
    private SagFindings() {}

    static List<Finding> of(HungLeaf hung, DisplayUnits display) {
        String gate = hung.id();
        GateSag sag = hung.sag();
        SagLimits limits = hung.limits();
        Length play = hung.gate().hinge().slack();
        List<Finding> findings = new ArrayList<>(List.of(
                release(gate, sag, limits, display),
                latch(gate, sag, limits, display),
                eye(gate, sag, limits, display),
                person(gate, sag, limits, play, display),
                gust(gate, sag.gust(), limits, play, display)));
        if (!hung.dryRise().isZero()) findings.add(dry(gate, hung.dryRise(), limits, display));
        sag.ice().ifPresent(drop -> findings.add(ice(gate, drop, limits, display)));
        return List.copyOf(findings);
    }

    /** Ice comes and goes; while it lies there the latch has to meet. */
    private static Finding ice(String gate, IceDrop ice, SagLimits limits, DisplayUnits display) {
        String message = gate + ": " + display.length(ice.thickness()) + " of ice weighs "
                + DecimalText.whole(ice.weight().pounds()) + " lb on the leaf and brings its latch corner down "
                + display.length(ice.drop()) + " until it thaws; the latch takes " + display.length(limits.latch())
                + " either way. Wind on it, frozen shut, is counted in D+0.7Di+0.7Wi.";
        return Checked.of(
                "sag.ice",
                Severity.CAUTION,
                gate,
                message,
                Basis.judgement("ice by ASCE 7-16 10.4.1 (from memory); the latch should meet while it lies there"),
                Measure.demand(ice.drop().inches(), limits.latch().inches(), "in"));
    }

    private static Finding release(String gate, GateSag sag, SagLimits limits, DisplayUnits display) {
        double soft = sag.releaseSoft().inches();
        String good = display.length(limits.release());
        String message = gate + ": the latch corner falls " + display.length(sag.hangAllowance())
                + " when the blocks are pulled: block it that much high. "
                + (soft > limits.release().inches()
                        ? "Were the ground soft it would fall " + display.length(soft) + ", more than the " + good
                                + " of a good hang."
                        : "Even in soft ground it falls no more than the " + good + " of a good hang.");
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

    /** Wood that is hung wet dries and the leaf, lighter, comes up again; hung dry it goes down as far when it rains. */
    private static Finding dry(String gate, Offset rise, SagLimits limits, DisplayUnits display) {
        String message = gate + ": as its wood dries the leaf comes up by " + display.length(rise)
                + " at the latch in soft soil, and goes down as far when it is wet again; the latch takes "
                + display.length(limits.latch()) + " either way.";
        return Checked.of(
                "sag.dry",
                Severity.CAUTION,
                gate,
                message,
                Basis.judgement("the elastic drop by the weight that comes and goes, wood at 28 and at 9 %"),
                Measure.demand(rise.inches(), limits.latch().inches(), "in"));
    }

    /** While a person hangs on the leaf the bar lies in its keeper; what must fit afterwards is what stays of the drop. Pulled out of the keeper it may never be. */
    private static Finding person(String gate, GateSag sag, SagLimits limits, Length play, DisplayUnits display) {
        LatchLive live = sag.person();
        double stays = sag.byTime().afterHanging().residual().inches();
        String message = gate + ": a person on the latch edge brings the latch down " + display.length(live.down())
                + " and " + sideways(live, display) + " while they hang there; " + display.length(stays)
                + " of the drop stays. The latch takes " + display.length(limits.latch())
                + " either way and reaches " + display.length(limits.bite()) + " into its keeper"
                + loose(play, display) + ".";
        return Checked.of(
                "sag.live",
                Severity.CAUTION,
                gate,
                message,
                Basis.judgement("what stays must fit the latch; what comes and goes must not pull it out"),
                tighter(stays, live, play, limits));
    }

    private static Finding gust(String gate, LatchLive live, SagLimits limits, Length play, DisplayUnits display) {
        String message = gate + ": the service gust moves the latch "
                + display.length(Math.abs(live.down().inches()))
                + " in height and " + sideways(live, display) + "; it takes " + display.length(limits.latch())
                + " either way and reaches " + display.length(limits.bite()) + " into its keeper"
                + loose(play, display) + ".";
        return Checked.of(
                "sag.gust",
                Severity.CAUTION,
                gate,
                message,
                Basis.judgement("the latch stays engaged in a service gust"),
                tighter(Math.abs(live.down().inches()), live, play, limits));
    }

    private static String sideways(LatchLive live, DisplayUnits display) {
        double away = live.away().inches();
        return display.length(Math.abs(away)) + (away < 0 ? " away from its post" : " towards its post");
    }

    private static String loose(Length play, DisplayUnits display) {
        return play.isZero() ? "" : ", of which the play of its hinges takes " + display.length(play);
    }

    /** Height against the tolerance, or the pull out of the keeper, with the play of the hinges, against the bite: whichever is used more. */
    private static Measure tighter(double heightIn, LatchLive live, Length play, SagLimits limits) {
        double pulled = Math.max(0, -live.away().inches()) + play.inches();
        double inHeight = Math.abs(heightIn) / limits.latch().inches();
        double inReach = pulled / limits.bite().inches();
        return inReach > inHeight
                ? Measure.demand(pulled, limits.bite().inches(), "in")
                : Measure.demand(Math.abs(heightIn), limits.latch().inches(), "in");
    }
}
