package plumbleaf.engine.sag;

import java.util.List;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Holds a sag budget against its limits. What drags on the ground is the swing's to say, with the drop this gives. */
public final class SagFindings {
    private static final String LATER = "creep, wear, season and what a person leaves are presumed";

    private SagFindings() {}

    /**
     * {@code sag.latch}: later drop against the latch's tolerance, must fix. {@code sag.eye}: against what the eye sees, caution. {@code
     * sag.soft}: in soft soil against the smaller of both, caution, and what a search over builds must pass. {@code sag.live}: movement of the
     * latch under a person or gust, caution.
     *
     * @param leaf whose id the findings bear
     */
    public static List<Finding> of(String leaf, GateSag sag, SagLimits limits, DisplayUnits display) {
        double later = atLeastNothing(sag.byTime().afterHanging().total());
        double soft = atLeastNothing(sag.afterHangingSoft());
        double live = Math.abs(sag.latchLive().down().inches());
        Length least = limits.least();
        return List.of(
                check(
                        "sag.latch",
                        Severity.MUST_FIX,
                        leaf,
                        "the latch corner is expected to drop another " + display.length(later) + " after hanging; the "
                                + limits.latchName() + " takes "
                                + display.length(limits.latch().inches()),
                        Basis.judgement(LATER),
                        later,
                        limits.latch()),
                check(
                        "sag.eye",
                        Severity.CAUTION,
                        leaf,
                        "another " + display.length(later) + " after hanging; the eye sees "
                                + display.length(limits.eye().inches()),
                        Basis.commonPractice("a quarter inch over the leaf shows"),
                        later,
                        limits.eye()),
                check(
                        "sag.soft",
                        Severity.CAUTION,
                        leaf,
                        "should the ground be softer than it looks, it drops " + display.length(soft)
                                + " after hanging; " + display.length(least.inches()) + " is allowed",
                        Basis.judgement("soft end of the soil band; " + LATER),
                        soft,
                        least),
                check(
                        "sag.live",
                        Severity.CAUTION,
                        leaf,
                        "under a " + sag.latchLive().from() + " the latch moves " + display.length(live)
                                + " up or down; the " + limits.latchName() + " takes "
                                + display.length(limits.latch().inches()),
                        Basis.judgement("the latch should stay engaged"),
                        live,
                        limits.latch()));
    }

    private static Finding check(
            String id, Severity severity, String leaf, String words, Basis basis, double measuredIn, Length limit) {
        return Checked.of(
                id, severity, leaf, leaf + ": " + words + ".", basis, Measure.demand(measuredIn, limit.inches(), "in"));
    }

    private static double atLeastNothing(Offset drop) {
        return Math.max(0, drop.inches());
    }
}
