package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.Slam;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.strength.PostStrength;
import plumbleaf.engine.strength.TubeStrength;

/**
 * A leaf that is let slam: what its latch post takes at grade against what it may; wood gets no more for a blow than for wind, since treated wood may not (NDS 2018 2.3.2). In stiff soil, which gives least and so takes the hardest blow.
 *
 * @param peak force at the strike
 * @param height of the strike above grade at the latch post
 */
record SlamCheck(Force peak, Length height, PostStock post) {
    private static final Remedy HOLD_BACK = cure("hold-back", "fit a hold-back, so that the wind cannot take it");
    private static final Remedy CLOSER = cure("closer", "fit a closer that checks the last of the swing");

    /** @param mustShut a gate that has to close by itself is not held back */
    static List<Remedy> cures(boolean mustShut) {
        return mustShut ? List.of(CLOSER) : List.of(HOLD_BACK, CLOSER);
    }

    /** How a gate is kept from a gust, in words. */
    private static String keeps(boolean mustShut) {
        return mustShut
                ? "a closer that checks it keeps it from that; one that must shut by itself is never held open."
                : "a hold-back or a closer keeps it from that.";
    }

    /**
     * @param foot what holds the latch post, in stiff ground
     * @param edge speed of the latch edge at the stop
     */
    static SlamCheck of(HungGate gate, PostStock latchPost, BaseSpring foot, Speed edge) {
        double aboveGrade =
                gate.leaf().latchAt().z().inches() - gate.latchPostGrade().inches();
        Length height = Length.inches(Math.max(0, aboveGrade));
        double stiffness = Slam.strikeStiffness(latchPost, foot, height);
        return new SlamCheck(Slam.peak(edge, gate.leaf(), stiffness), height, latchPost);
    }

    Moment atGrade() {
        return Moment.poundInches(peak.pounds() * height.inches());
    }

    Moment allowed() {
        return post.match(
                steel -> TubeStrength.of(steel).allowableY(),
                wood -> PostStrength.of(wood).allowableInWind());
    }

    Finding finding(String gate, Speed edge, boolean mustShut) {
        Checked checked = Checked.of(
                "gate.slam",
                Severity.CAUTION,
                gate,
                gate + ": let go at " + DecimalText.upTo(edge.mph(), 1) + " mph it strikes its latch post with up to "
                        + DecimalText.whole(peak.pounds()) + " lb, "
                        + DecimalText.whole(atGrade().inPoundFeet()) + " lb-ft at grade; it may take "
                        + DecimalText.whole(allowed().inPoundFeet())
                        + " lb-ft. A gust slams far harder than a hand: " + keeps(mustShut),
                Basis.judgement("all of the leaf's energy taken by post and footing, F = (v / b) sqrt(I k)"),
                Measure.demand(atGrade().poundInches(), allowed().poundInches(), "lb-in"));
        return checked.severity() == Severity.PASS ? checked : checked.withRemedies(cures(mustShut));
    }

    /** A leaf that nothing holds open, driven shut by the service gust over a radian. */
    Finding inGust(String gate, Speed gust, Speed edge, boolean mustShut) {
        Checked checked = Checked.of(
                "gate.gust-slam",
                Severity.CAUTION,
                gate,
                gate + ": nothing holds it open; a gust of " + DecimalText.whole(gust.mph())
                        + " mph slams it at " + DecimalText.upTo(edge.mph(), 1) + " mph with up to "
                        + DecimalText.whole(peak.pounds()) + " lb, "
                        + DecimalText.whole(atGrade().inPoundFeet())
                        + " lb-ft at grade of its latch post; it may take "
                        + DecimalText.whole(allowed().inPoundFeet()) + " lb-ft.",
                Basis.judgement("the gust's work over one radian, all of it taken by post and footing"),
                Measure.demand(atGrade().poundInches(), allowed().poundInches(), "lb-in"));
        return checked.severity() == Severity.PASS ? checked : checked.withRemedies(held(gate, mustShut));
    }

    /** A leaf that stands free is kept open by a rod into the ground: one press, and its price with it. */
    private static List<Remedy> held(String gate, boolean mustShut) {
        if (mustShut) return cures(true);
        return List.of(
                new Remedy(
                        "hold-back",
                        "fit a cane bolt that holds it open, so that the wind cannot take it",
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.of("gates[" + gate + "].holdOpen=cane-bolt")),
                CLOSER);
    }

    private static Remedy cure(String id, String words) {
        return new Remedy(id, words, OptionalDouble.empty(), Optional.empty(), Optional.empty());
    }
}
