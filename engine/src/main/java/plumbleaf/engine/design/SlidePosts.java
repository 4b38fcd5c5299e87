package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.sag.WindWay;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.RatedGust;
import plumbleaf.engine.strength.WheelOnTube;

/** The three posts of a slide gate: front rollers, receiver, rear rollers. */
final class SlidePosts {
    /** Share of what stands still that may be counted on against being lifted. Source: ASCE 7-16 2.4.1 combination 7. */
    static final double STANDING = 0.6;

    private SlidePosts() {}

    static GatePosts of(GateSite site, GateDesign gate, Stated<Length> depth, PostWork work) {
        SlideDesign slide = gate.slide().orElseThrow();
        PostDesign front = post(site, gate, depth, work, slide.frontPost(), SlideCase::frontPost);
        PostDesign receiver = post(site, gate, depth, work, slide.receiverPost(), SlideCase::receiverPost);
        PostDesign rear = post(site, gate, depth, work, slide.rearPost(), SlideCase::rearPost);
        List<Finding> more = new ArrayList<>();
        more.add(uplift(gate, slide, front, rear));
        GatePosts.heaveApart(site, gate.id(), front, receiver).ifPresent(more::add);
        return new GatePosts(
                gate.onPosts(loadPath(gate, slide, front, receiver, rear), more), front, receiver, Optional.of(rear));
    }

    private static PostDesign post(
            GateSite site,
            GateDesign gate,
            Stated<Length> depth,
            PostWork work,
            String id,
            Function<SlideCase, BaseAction> of) {
        SlideDesign slide = gate.slide().orElseThrow();
        Stated<Length> told = site.job().builds().of(site.gate()).latchDepth();
        Post post = site.post(id);
        boolean receiver = id.equals(slide.receiverPost());
        List<CombinedAction> actions = new ArrayList<>();
        for (SlideCase each : slide.cases()) {
            if (receiver && each.state() != LeafState.CLOSED) continue;
            actions.add(
                    new CombinedAction(each.combination(), each.state().key(), windKey(each.wind()), of.apply(each)));
        }
        return work.gatePost(
                post,
                receiver ? gate.build().latchPost() : gate.build().hingePost(),
                receiver
                        ? GateFoot.secondHole(site, gate.build().hole()).diameter()
                        : gate.build().hole().diameter(),
                receiver && told.isSaid() ? told : depth,
                actions,
                !receiver,
                Length.ZERO,
                site.wind(),
                Optional.empty());
    }

    private static String windKey(WindWay wind) {
        return switch (wind) {
            case NONE -> "none";
            case IN -> "wind-in";
            case OUT -> "wind-out";
        };
    }

    /**
     * The leaf lifts a roller post; what holds it down is counted at 0.6: the post and its concrete, and nothing of the grip of the soil.
     * Source: ASCE 7-16 2.4.1 combination 7; soil left out, judgement. Check: SlideGateTest.
     */
    private static Finding uplift(GateDesign gate, SlideDesign slide, PostDesign front, PostDesign rear) {
        SlideWheels.Most most = new SlideWheels(slide).uplift();
        PostDesign post = most.front() ? front : rear;
        String said = gate.id() + ": the leaf lifts post " + post.id() + " by its " + most.where() + " with up to "
                + DecimalText.whole(Math.max(0, most.value())) + " lb (" + most.inCase() + ")";
        if (post.hole().isZero())
            return Checked.note(
                    "slide.uplift",
                    most.value() > 0 ? Severity.CANNOT_SAY : Severity.PASS,
                    gate.id(),
                    said + "; what holds the post down is not a footing of its own. Have it checked.",
                    Basis.judgement("a post without its own concrete"));
        double steel = post.section().weightOf(post.length()).pounds();
        double holds = STANDING * (steel + post.concrete().weight().pounds());
        return Checked.of(
                "slide.uplift",
                Severity.MUST_FIX,
                gate.id(),
                said + "; 0.6 of post and concrete is " + DecimalText.whole(holds)
                        + " lb, the soil's grip not counted. A longer tail, a deeper or a wider hole or a bell brings more.",
                Basis.clause("ASCE 7-16 2.4.1 combination 7"),
                Measure.demand(Math.max(0, most.value()), holds, "lb"));
    }

    /** Every link from the leaf to the soil, weakest first. */
    private static List<LinkUse> loadPath(
            GateDesign gate, SlideDesign slide, PostDesign front, PostDesign receiver, PostDesign rear) {
        List<LinkUse> path = new ArrayList<>();
        SlideStrength.Use frame = SlideStrength.frame(slide, true);
        path.add(new LinkUse(
                "leaf frame",
                frame.member(),
                frame.utilisation(),
                frame.inCase(),
                SlideStrength.work(slide.gate().plan(), frame)));
        SlideStrength.Use weld = SlideStrength.weld(slide, true);
        path.add(new LinkUse(
                "frame weld",
                weld.member(),
                weld.utilisation(),
                weld.inCase(),
                SlideStrength.weldWork(slide.gate().plan(), weld)));
        path.addAll(wheels(gate, slide));
        path.addAll(GatePosts.links("front roller post", front));
        path.addAll(GatePosts.links("rear roller post", rear));
        path.addAll(GatePosts.links("receiver post", receiver));
        path.sort(LinkUse.WEAKEST_FIRST);
        return path;
    }

    private static List<LinkUse> wheels(GateDesign gate, SlideDesign slide) {
        List<LinkUse> path = new ArrayList<>();
        SlideWheels wheels = new SlideWheels(slide);
        var rollers = slide.gate().plan().rollers();
        SlideWheels.Most load = wheels.load();
        if (!rollers.capacity().isZero())
            path.add(new LinkUse(
                    "rollers",
                    gate.id(),
                    load.value() / rollers.capacity().pounds(),
                    load.inCase(),
                    new LinkWork(
                            "R / capacity",
                            load.where() + " " + DecimalText.whole(load.value()) + " lb of "
                                    + DecimalText.whole(rollers.capacity().pounds()),
                            rollers.source())));
        Section tube = slide.gate().plan().leaf().make().tube();
        SlideWheels.Most across = wheels.across();
        if (!rollers.sideCapacity().isZero())
            path.add(new LinkUse(
                    "guide wheels",
                    gate.id(),
                    across.value() / rollers.sideCapacity().pounds(),
                    across.inCase(),
                    new LinkWork(
                            "H / capacity",
                            across.where() + " " + DecimalText.whole(across.value()) + " lb of "
                                    + DecimalText.whole(rollers.sideCapacity().pounds()),
                            rollers.source())));
        path.add(new LinkUse(
                "wall under the wheel",
                gate.id(),
                wheels.onWall(),
                load.inCase(),
                new LinkWork(
                        "R / (2 Fy t 5 k / 1.5), k = 1.5 t; round R / (5.5 Fy t2 / 1.67)",
                        DecimalText.whole(load.value()) + " lb on " + tube.name() + ", Fy "
                                + DecimalText.whole(tube.yieldStress().psi()) + " psi, t "
                                + DecimalText.fixed(tube.designWall().inches(), 4) + " in.: "
                                + DecimalText.whole(WheelOnTube.allowable(tube).pounds()) + " lb",
                        "AISC 360-10 K1-9, K1-1, from memory",
                        WheelOnTube.lines(tube, Force.pounds(load.value())))));
        SlideWheels.Most bolts = wheels.bolts();
        if (rollers.bolts() > 0)
            path.add(new LinkUse("roller bolts", gate.id(), bolts.value(), bolts.inCase(), wheels.boltWork(bolts)));
        return path;
    }

    /** The same with the gust that each of its links stands. */
    static GatePosts rated(GateSite site, GatePosts posts) {
        SlideGust gust = new SlideGust(site, posts.gate().slide().orElseThrow());
        RatedGust front = gust.post(posts.hinge(), SlideCase::frontPost);
        RatedGust receiver = gust.post(posts.latch(), SlideCase::receiverPost);
        PostDesign behind = posts.rear().orElseThrow();
        RatedGust rear = gust.post(behind, SlideCase::rearPost);
        RatedGust whole = gust.leaf().lesser(front).lesser(receiver).lesser(rear);
        return new GatePosts(
                posts.gate().rated(whole),
                posts.hinge().rated(front),
                posts.latch().rated(receiver),
                Optional.of(behind.rated(rear)));
    }
}
