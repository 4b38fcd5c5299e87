package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.SlideSpec;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.sag.SlideSag;

/** What is to be said of how a slide leaf is carried: wheels, frame, nose, hand, stop. Its posts and footings come with them. */
final class SlideChecks {
    /** More than this takes two people to start. Judgement. */
    private static final Force BY_HAND = Force.pounds(40);

    private final GateSite site;
    private final SlideDesign slide;
    private final SlideWheels wheels;
    private final RollerModel rollers;
    private final String id;
    private final DisplayUnits display;
    private final Severity windy;

    SlideChecks(GateSite site, SlideDesign slide) {
        this.site = site;
        this.slide = slide;
        this.wheels = new SlideWheels(slide);
        this.rollers = slide.gate().plan().rollers();
        this.id = site.gate().id();
        this.display = site.job().display();
        this.windy = site.basis() == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION;
    }

    /** What its way over the ground must allow for: as much as nose or tail sinks, and what comes later. */
    static Length drop(SlideDesign slide) {
        double most = Math.max(slide.sag().total().inches(), slide.sag().tail().inches());
        return Length.inches(Math.max(0, most + slide.sag().afterSetting().inches()));
    }

    /** Why it stands on nothing, where the rear rollers find no place on its leg of the fence. */
    static List<Finding> noPlace(GateSite site) {
        if (site.roller().isPresent()) return List.of();
        return List.of(Checked.note(
                "slide.rear",
                Severity.MUST_FIX,
                site.gate().id(),
                site.gate().id()
                        + ": its rear roller post would stand past the corner or the end of its leg, and the leaf runs"
                        + " straight. Let it slide to the other side, move it along the line, or build a pair.",
                Basis.judgement("both roller posts stand in one line with the opening")));
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        findings.add(load());
        findings.add(across());
        findings.add(wall());
        findings.add(bolts());
        findings.addAll(frame());
        findings.addAll(nose());
        findings.add(hand());
        findings.add(stop());
        return findings;
    }

    private Finding load() {
        SlideWheels.Most most = wheels.load();
        SlideWheels.Most lifted = wheels.uplift();
        String carried = id + ": the " + most.where() + " carry up to " + DecimalText.whole(most.value()) + " lb ("
                + most.inCase() + ")"
                + (lifted.value() > 0
                        ? ", and the leaf lifts against the " + lifted.where() + " with "
                                + DecimalText.whole(lifted.value()) + " lb (" + lifted.inCase() + ")"
                        : "");
        if (rollers.capacity().isZero()) return unknown("slide.rollers", carried, "carries");
        return Checked.of(
                "slide.rollers",
                Severity.MUST_FIX,
                id,
                carried + "; " + rollers.name() + " takes "
                        + DecimalText.whole(rollers.capacity().pounds()) + " lb.",
                Basis.judgement(rollers.source()),
                Measure.demand(most.value(), rollers.capacity().pounds(), "lb"));
    }

    private Finding unknown(String check, String said, String does) {
        return Checked.note(
                check,
                Severity.CANNOT_SAY,
                id,
                said + "; what " + rollers.name() + " " + does + " is not known. Enter its maker's sheet.",
                Basis.judgement("no capacity, no pass"));
    }

    private Finding across() {
        SlideWheels.Most most = wheels.across();
        String carried = id + ": the wind pushes the wheels of the " + most.where() + " across with up to "
                + DecimalText.whole(most.value()) + " lb at one tube (" + most.inCase() + ")";
        if (rollers.sideCapacity().isZero()) return unknown("slide.guides", carried, "holds across");
        return Checked.of(
                "slide.guides",
                windy,
                id,
                carried + "; they take "
                        + DecimalText.whole(rollers.sideCapacity().pounds()) + " lb.",
                Basis.judgement(rollers.source()),
                Measure.demand(most.value(), rollers.sideCapacity().pounds(), "lb"));
    }

    private Finding wall() {
        double use = wheels.onWall();
        return Checked.of(
                "slide.wheel",
                Severity.MUST_FIX,
                id,
                id + ": the wheel under the most load uses " + DecimalText.fixed(use, 2)
                        + " of what the wall of its tube bears.",
                Basis.fromMemory("AISC 360-10 K1-9, K1-1"),
                Measure.demand(use, 1, ""));
    }

    private Finding bolts() {
        if (rollers.bolts() == 0)
            return unknown("slide.bolts", id + ": its roller brackets are held in a way no table tells", "is held by");
        SlideWheels.Most most = wheels.bolts();
        return Checked.of(
                "slide.bolts",
                Severity.MUST_FIX,
                id,
                id + ": the bolts of the " + most.where() + " use " + DecimalText.fixed(most.value(), 2)
                        + " of what they may (" + most.inCase()
                        + "): through-bolt them, and let the maker's plate bear on the post.",
                Basis.clause("AISC 360-22 J3.7, Table J3.2"),
                Measure.demand(most.value(), 1, ""));
    }

    private List<Finding> frame() {
        SlideStrength.Use still = SlideStrength.frame(slide, false);
        SlideStrength.Use wind = SlideStrength.frame(slide, true);
        SlideStrength.Use welds = SlideStrength.weld(slide, false);
        boolean stillFails = welds.utilisation() > 1;
        SlideStrength.Use told = stillFails ? welds : SlideStrength.weld(slide, true);
        return List.of(
                used("leaf.frame", Severity.MUST_FIX, still, SlideStrength.CLAUSE, " carries "),
                used("leaf.wind", windy, wind, SlideStrength.CLAUSE, " carries "),
                used("leaf.weld", stillFails ? Severity.MUST_FIX : windy, told, FrameWelds.CLAUSE, "'s weld carries "));
    }

    private Finding used(String check, Severity failed, SlideStrength.Use use, String clause, String verb) {
        return Checked.of(
                check,
                failed,
                id,
                id + ": " + use.member() + verb + DecimalText.fixed(use.utilisation(), 2) + " of what it may ("
                        + use.inCase() + ").",
                Basis.clause(clause),
                Measure.demand(use.utilisation(), 1, ""));
    }

    private List<Finding> nose() {
        SlideSag sag = slide.sag();
        SlideSpec spec = slide.gate().plan().kind().spec();
        Finding set = Checked.note(
                "slide.set",
                Severity.PASS,
                id,
                id + ": its nose would drop " + display.length(sag.total()) + ", "
                        + display.length(sag.byCause().frame())
                        + " by its frame, which is built up in the jig, and the rest by play, posts and"
                        + " footings: set the rear rollers " + display.length(sag.rearLower())
                        + " low and the nose stands level.",
                Basis.commonPractice("the nose is set level before the receiver"));
        Finding low = Checked.of(
                "slide.nose",
                Severity.MUST_FIX,
                id,
                id + ": its nose comes to the receiver up to " + display.length(sag.low()) + " low, "
                        + display.length(sag.person()) + " of it by a person who hangs on it; the receiver takes "
                        + display.length(spec.mouthUp()) + ".",
                Basis.judgement("wear, creep, season and a person's weight"),
                Measure.demand(Math.max(0, sag.low().inches()), spec.mouthUp().inches(), "in"));
        Length takes =
                slide.gate().plan().mouthToPost(slide.gate().receiver().stock().width());
        Finding aside = Checked.of(
                "slide.across",
                Severity.CAUTION,
                id,
                id + ": a gust of "
                        + DecimalText.whole(site.gate().loads().serviceGust().mph())
                        + " mph moves its nose " + display.length(sag.across())
                        + " aside before the receiver has it; the mouth takes "
                        + display.length(takes)
                        + (takes.compareTo(spec.mouthAcross()) < 0 ? " before the post's face." : "."),
                Basis.judgement("somebody closes it in wind"),
                Measure.demand(sag.across().inches(), takes.inches(), "in"));
        return List.of(set, low, aside);
    }

    private Finding hand() {
        return Checked.of(
                "slide.hand",
                Severity.CAUTION,
                id,
                id + " takes " + DecimalText.whole(slide.rolling().pounds()) + " lb to keep it moving on the level and "
                        + DecimalText.whole(slide.starting().pounds())
                        + " lb where it was set a quarter inch in ten feet out of level.",
                Basis.judgement("rolling friction of clean wheels"),
                Measure.demand(slide.starting().pounds(), BY_HAND.pounds(), "lb"));
    }

    private Finding stop() {
        return Checked.note(
                "slide.stop",
                Severity.CAUTION,
                id,
                id + ": at " + DecimalText.upTo(site.gate().loads().slamSpeed().mph(), 1)
                        + " mph it runs into its stop with up to "
                        + DecimalText.whole(slide.stop().pounds())
                        + " lb. Bolt a rubber-faced stop at both ends of its way, open and closed, that the leaf cannot pass.",
                Basis.judgement("all of the leaf's energy taken by post and footing, F = v sqrt(k W / g)"));
    }
}
