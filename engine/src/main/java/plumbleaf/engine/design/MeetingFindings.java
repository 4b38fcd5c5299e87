package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Speed;

/** What is to be said of the place where the leaves of a pair meet. */
final class MeetingFindings {
    /** A leaf passes over a sleeve with this much left. Judgement. */
    private static final double OVER_SLEEVE_IN = 0.5;

    /** What a stop must reach up the leaf to hold it. Judgement. */
    private static final double STOP_ON_LEAF_IN = 0.75;

    /** How far a top may go out of plane in the service gust: 1 in 100 of its height. Judgement. */
    private static final double TOP_SHARE = 0.01;

    private final GateSite site;
    private final PairWork work;
    private final PairDesign pair;
    private final DisplayUnits display;
    private final String gate;

    private MeetingFindings(GateSite site, PairWork work, PairDesign pair) {
        this.site = site;
        this.work = work;
        this.pair = pair;
        this.display = site.job().display();
        this.gate = site.gate().id();
    }

    static List<Finding> of(GateSite site, PairWork work, PairDesign pair) {
        MeetingFindings all = new MeetingFindings(site, work, pair);
        List<Finding> findings = new ArrayList<>();
        findings.add(all.rod());
        findings.add(all.sleeve());
        findings.add(all.mouth());
        if (pair.asked().hasStop()) findings.add(all.stop());
        findings.add(all.top());
        findings.add(all.drops());
        findings.add(all.slam());
        return findings;
    }

    private Severity windy() {
        return site.basis() == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION;
    }

    private Finding rod() {
        String rods = pair.rods() == 1 ? "its one rod holds both leaves and" : "each of its two rods";
        String message = gate + ": " + rods + " is pushed with "
                + DecimalText.whole(pair.rod().push().pounds()) + " lb in "
                + pair.worst().combination().key() + ", wind "
                + pair.worst().wind().key() + ", "
                + display.length(pair.rod().exposed()) + " above its sleeve: "
                + DecimalText.whole(pair.rod().moment().poundInches()) + " lb-in, "
                + DecimalText.upTo(pair.rod().stress().psi() / 1000, 0) + " ksi; the "
                + pair.rod().rod().name() + " may take "
                + DecimalText.whole(pair.rod().allowable().poundInches()) + " lb-in.";
        Checked checked = Checked.of(
                "pair.rod",
                windy(),
                gate,
                message,
                Basis.clause("AISC 360-22 F11.1 (ASD, omega 1.67); cantilever from the sleeve"),
                Measure.demand(
                        pair.rod().moment().poundInches(),
                        pair.rod().allowable().poundInches(),
                        "lb-in"));
        return checked.severity() == Severity.PASS
                ? checked
                : checked.withRemedies(MeetingRemedies.of(site, work, pair));
    }

    private Finding sleeve() {
        if (pair.sleeveNeeded().isZero())
            return Checked.note(
                    "pair.sleeve",
                    Severity.CANNOT_SAY,
                    gate,
                    gate + ": nothing is presumed for the ground its sleeve stands in.",
                    Basis.clause("IBC 2021 1806.2"));
        String message = gate + ": the sleeve where its leaves meet is pushed with "
                + DecimalText.whole(pair.sleevePush().pounds()) + " lb; set it in a hole "
                + display.length(pair.sleeve().diameter()) + " by "
                + display.length(pair.sleeve().depth()) + ", "
                + display.length(pair.sleeveNeeded()) + " deep needed.";
        Checked checked = Checked.of(
                "pair.sleeve",
                windy(),
                gate,
                message,
                Basis.clause("IBC 2021 1807.3.2.1"),
                Measure.provided(
                        pair.sleeve().depth().inches(), pair.sleeveNeeded().inches(), "in"));
        if (checked.severity() == Severity.PASS) return checked;
        Length deeper = site.standards().footing().rounded(pair.sleeveNeeded());
        return checked.withRemedies(List.of(new Remedy(
                "deeper-sleeve",
                "set the sleeve " + display.length(deeper) + " deep",
                OptionalDouble.of(pair.sleeveNeeded().inches() / deeper.inches()),
                Optional.empty(),
                MeetingRemedies.edit(gate, "sleeveDepth", deeper))));
    }

    /** A raised sleeve is driven over and swung over: the leaf must pass. */
    private Finding mouth() {
        double clear = pair.place().clear().inches();
        double above = pair.asked().sleeveAbove().inches();
        String message = gate + ": its leaves pass " + display.length(Math.max(0, clear - above))
                + " over the mouth of the sleeve where they meet.";
        return Checked.of(
                "pair.mouth",
                Severity.MUST_FIX,
                gate,
                message,
                Basis.judgement("half an inch over the sleeve"),
                Measure.demand(above + OVER_SLEEVE_IN, clear, "in"));
    }

    /** A centre stop holds a leaf only where it reaches up to it; it stands on the side that the leaves do not swing to. */
    private Finding stop() {
        double needed = pair.place().toGuide().inches() + STOP_ON_LEAF_IN;
        String message =
                gate + ": its center stop stands " + display.length(pair.asked().stop())
                        + " above the ground; to hold both leaves it must reach " + display.length(needed) + ".";
        return Checked.of(
                "pair.stop",
                Severity.MUST_FIX,
                gate,
                message,
                Basis.judgement("3/4 in. on the higher leaf"),
                Measure.provided(pair.asked().stop().inches(), needed, "in"));
    }

    private Finding top() {
        double play = pair.topPlay().inches();
        double top = pair.topInService().inches() + play;
        double limit = site.gate().leaf().infill().inches() * TOP_SHARE;
        Speed gust = site.gate().loads().serviceGust();
        String message = gate + ": held at the foot alone, the tops of its leaves go up to " + display.length(top)
                + " out of line in a gust of " + DecimalText.whole(gust.mph()) + " mph where they meet"
                + (play > 0 ? ", " + display.length(play) + " of it the play of the rod" : "") + ", and "
                + display.length(pair.topInWind().inches() + play) + " in the design wind.";
        Checked checked = Checked.of(
                "pair.top",
                Severity.CAUTION,
                gate,
                message,
                Basis.judgement("1 in 100 of the height"),
                Measure.demand(top, limit, "in"));
        if (checked.severity() == Severity.PASS || pair.asked().topKeeper()) return checked;
        return checked.withRemedies(MeetingRemedies.ofTop(site, work, limit));
    }

    private Finding drops() {
        double limit = site.latch().tolerance().inches();
        String message = gate + ": in the years after hanging " + gate + "a may drop "
                + display.length(pair.dropA()) + " and " + gate + "b " + display.length(pair.dropB())
                + " in soft soil, " + display.length(pair.dropDifference()) + " apart at their latch, which takes "
                + display.length(limit) + ".";
        return Checked.of(
                "sag.meeting",
                Severity.MUST_FIX,
                gate,
                message,
                Basis.judgement("creep, wear, season and a person's residual"),
                Measure.demand(pair.dropDifference().inches(), limit, "in"));
    }

    private Finding slam() {
        Speed speed = work.slamSpeed();
        Checked checked = Checked.of(
                "gate.slam",
                Severity.CAUTION,
                gate,
                gate + ": " + SlamCheck.arrives(site.gate(), speed) + " one leaf strikes the other with up to "
                        + DecimalText.whole(pair.slam().pounds()) + " lb, which comes down on the rod: "
                        + DecimalText.whole(pair.slamRod().moment().poundInches()) + " lb-in; it may take "
                        + DecimalText.whole(pair.slamRod().allowable().poundInches())
                        + " lb-in. A gust slams far harder than a hand: "
                        + (site.mustShut()
                                ? "closers that check both leaves keep them from that."
                                : "what holds both leaves open keeps them from that."),
                Basis.judgement("all of the leaf's energy taken by the other leaf and its rod, F = (v / b) sqrt(I k)"),
                Measure.demand(
                        pair.slamRod().moment().poundInches(),
                        pair.slamRod().allowable().poundInches(),
                        "lb-in"));
        return checked.severity() == Severity.PASS ? checked : checked.withRemedies(SlamCheck.cures(site.gate()));
    }
}
