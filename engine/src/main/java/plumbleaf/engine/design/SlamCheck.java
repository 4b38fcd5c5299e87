package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.Slam;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.strength.PostStrength;
import plumbleaf.engine.strength.TubeStrength;

/**
 * A leaf that is let slam: what its latch post takes at grade against what it may; wood gets no more for a blow than for wind, since treated wood may not (NDS 2018 2.3.2). In stiff soil,
 * which gives least and so takes the hardest blow.
 *
 * @param peak force at the strike
 * @param height of the strike above grade at the latch post
 */
record SlamCheck(Force peak, Length height, PostStock post) {
    /** How a gate is kept from a blow: one that must shut by itself is not held back; one that a rod keeps open already, or a closer checks, has that cure. */
    static List<Remedy> cures(Gate gate, boolean mustShut) {
        List<Remedy> cures = new ArrayList<>();
        if (!mustShut && standsFree(gate))
            cures.add(Remedy.ofEdit(
                    "hold-back",
                    "fit a cane bolt that holds it open, so that the wind cannot take it",
                    "gates[" + gate.id() + "].holdOpen=cane-bolt"));
        if (!gate.hinges().closer()) cures.add(closer(gate));
        return cures;
    }

    /** Of a blow by hand, which comes to a gate however it is held open: a closer. */
    static List<Remedy> cures(Gate gate) {
        return gate.hinges().closer() ? List.of() : List.of(closer(gate));
    }

    private static boolean standsFree(Gate gate) {
        return gate.kind()
                .match(
                        swing -> isFree(swing.holdOpen()),
                        pair -> isFree(pair.holdOpen()),
                        slide -> false,
                        flagged -> false);
    }

    private static boolean isFree(HoldOpen how) {
        return how.match(free -> true, bolt -> false, stop -> false, lock -> false);
    }

    private static Remedy closer(Gate gate) {
        return Remedy.ofEdit(
                "closer",
                "fit a closer that checks the last of the swing",
                "gates[" + gate.id() + "].hinges.closer=true");
    }

    /** How a gate is kept from a gust, in words. */
    private static String keeps(boolean mustShut) {
        return mustShut
                ? "a closer that checks it keeps it from that; one that must shut by itself is never held open."
                : "a hold-back or a closer keeps it from that.";
    }

    /** What a gust asks of the closer of a leaf that nothing else holds: only its maker can say whether it is stood. */
    static Finding onCloser(String gate, Speed gust, Moment torque) {
        return Checked.note(
                "gate.closer",
                Severity.CANNOT_SAY,
                gate,
                gate + ": nothing but its closer holds it open; a gust of " + DecimalText.whole(gust.mph())
                        + " mph turns the leaf with " + DecimalText.whole(torque.inPoundFeet())
                        + " lb-ft. Fit a closer whose maker's sheet says that it checks that much, or hold the leaf open.",
                Basis.judgement("wind on the whole leaf at the middle of its width; the maker's sheet decides"));
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

    /** How a leaf that is let go comes to its stop, in words that end before what it strikes. */
    static String arrives(Gate gate, Speed edge) {
        String speed = DecimalText.upTo(edge.mph(), 1) + " mph";
        boolean checked = gate.hinges().closer() && edge.compareTo(gate.loads().slamSpeed()) < 0;
        return checked
                ? "brought home by its closer at " + speed
                        + ", set to 5 seconds from 90 to 12 degrees and no faster after (2010 ADA Standards 404.2.8.1),"
                : "let go at " + speed;
    }

    /**
     * All of it for the calculation book, to the ratio of {@link #finding}.
     *
     * @param soil what the pier's spring in stiff soil comes from, where that is soil alone
     */
    Working working(String latchPostId, List<WorkedLine> soil, HungGate gate, Gate asked, BaseSpring foot) {
        List<WorkedLine> all = new ArrayList<>(soil);
        Slam.closer(asked, gate.leaf()).ifPresent(all::add);
        all.addAll(Slam.strike(post, foot, height));
        all.addAll(Slam.lines(Slam.edge(asked, gate.leaf()), gate.leaf(), Slam.strikeStiffness(post, foot, height)));
        WorkedLine moment = WorkedLine.of("M", "F \u00d7 h")
                .put(all.get(all.size() - 1))
                .put("h", height)
                .gives(atGrade().poundInches(), "lb-in");
        all.add(moment);
        all.add(WorkedLine.of("ratio", "M / Ma")
                .put(moment)
                .put("Ma", allowed().poundInches(), "lb-in")
                .note("Ma of the post across the fence, see Sections")
                .gives(atGrade().poundInches() / allowed().poundInches()));
        return new Working(
                "The leaf let slam against latch post " + latchPostId,
                "energy of a rigid leaf on a spring; judgement",
                "all of the leaf's energy taken up by post and footing, in stiff soil, which gives least",
                all);
    }

    Moment atGrade() {
        return Moment.poundInches(peak.pounds() * height.inches());
    }

    Moment allowed() {
        return post.match(
                steel -> TubeStrength.of(steel).allowableY(),
                wood -> PostStrength.of(wood).allowableInWind());
    }

    Finding finding(String gate, Speed edge, Gate asked, boolean mustShut) {
        Checked checked = Checked.of(
                "gate.slam",
                Severity.CAUTION,
                gate,
                gate + ": " + arrives(asked, edge) + " it strikes its latch post with up to "
                        + DecimalText.whole(peak.pounds()) + " lb, "
                        + DecimalText.whole(atGrade().inPoundFeet()) + " lb-ft at grade; it may take "
                        + DecimalText.whole(allowed().inPoundFeet())
                        + " lb-ft."
                        + (asked.hinges().closer() ? "" : " A gust slams far harder than a hand: " + keeps(mustShut)),
                Basis.judgement("all of the leaf's energy taken by post and footing, F = (v / b) sqrt(I k)"),
                Measure.demand(atGrade().poundInches(), allowed().poundInches(), "lb-in"));
        return checked.severity() == Severity.PASS ? checked : checked.withRemedies(cures(asked, mustShut));
    }

    /** A leaf that nothing holds open, driven shut by the service gust over a radian. */
    Finding inGust(Gate asked, Speed gust, Speed edge, boolean mustShut) {
        String gate = asked.id();
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
        return checked.severity() == Severity.PASS ? checked : checked.withRemedies(cures(asked, mustShut));
    }
}
