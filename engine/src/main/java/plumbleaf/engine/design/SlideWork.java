package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.gate.IceCoat;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.gate.SlideShape;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.PierSprings;
import plumbleaf.engine.sag.PostPush;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.sag.SlideForces;
import plumbleaf.engine.sag.SlideGate;
import plumbleaf.engine.sag.SlideLoads;
import plumbleaf.engine.sag.SlidePost;
import plumbleaf.engine.sag.SlideSag;
import plumbleaf.engine.sag.SlideSags;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.wind.LeafWind;
import plumbleaf.engine.wind.Screen;

/** Puts a slide leaf on its posts and works out what it does to them. */
final class SlideWork {
    /** How far out of level a crew may set the rollers: a quarter inch in ten feet. Judgement. */
    private static final double OUT_OF_LEVEL = 0.25 / 120;

    private final GateSite site;
    private final PickedGate build;
    private final SlidePlan plan;

    private SlideWork(GateSite site, PickedGate build, SlidePlan plan) {
        this.site = site;
        this.build = build;
        this.plan = plan;
    }

    /** Empty where the rear rollers find no place, or what holds one of the posts has no numbers. */
    static Optional<SlideDesign> of(GateSite site, PickedGate build, SlidePlan plan) {
        return new SlideWork(site, build, plan).design(false);
    }

    /** The same looked at where the leaf stands closed, just off its receiver and open. */
    static Optional<SlideDesign> atItsEnds(GateSite site, PickedGate build, SlidePlan plan) {
        return new SlideWork(site, build, plan).design(true);
    }

    /** How its nose drops alone; empty where {@link #of} is. */
    static Optional<SlideSag> sag(GateSite site, PickedGate build, SlidePlan plan) {
        SlideWork work = new SlideWork(site, build, plan);
        return work.gate()
                .map(gate -> SlideSags.of(gate, work.loads(), site.standards().life()));
    }

    private boolean frontFirst() {
        return plan.along().equals(site.line().line().directionAt(site.gate().station()));
    }

    private Optional<SlideGate> gate() {
        Post front = frontFirst() ? site.first() : site.second();
        Post receiver = frontFirst() ? site.second() : site.first();
        Optional<Post> rear = site.roller();
        if (rear.isEmpty()) return Optional.empty();
        SlideShape shape = plan.shape();
        double receiverAt = shape.opening().inches() + build.latchPost().depth().inches() / 2;
        Optional<SlidePost> onFront = post(front, build.hingePost(), build.hole(), shape.frontRollers());
        Optional<SlidePost> onRear = post(rear.get(), build.hingePost(), build.hole(), shape.rearRollers());
        Optional<SlidePost> atReceiver =
                post(receiver, build.latchPost(), GateFoot.secondHole(site, build.hole()), Offset.inches(receiverAt));
        if (onFront.isEmpty() || onRear.isEmpty() || atReceiver.isEmpty()) return Optional.empty();
        return Optional.of(new SlideGate(plan, onFront.get(), onRear.get(), atReceiver.get()));
    }

    private Optional<SlideDesign> design(boolean atItsEnds) {
        Optional<SlideGate> stands = gate();
        if (stands.isEmpty()) return Optional.empty();
        SlideGate gate = stands.get();
        SlideLoads loads = loads();
        List<SlideCase> cases = atItsEnds ? SlideForces.atItsEnds(gate, loads) : SlideForces.of(gate, loads);
        double rolling = plan.rollers().rolling() * mostOnWheels(cases);
        double weight = plan.leaf().weight().wet().pounds();
        return Optional.of(new SlideDesign(
                gate,
                cases,
                SlideSags.of(gate, loads, site.standards().life()),
                (frontFirst() ? site.first() : site.second()).id(),
                (frontFirst() ? site.second() : site.first()).id(),
                site.roller().orElseThrow().id(),
                Force.pounds(rolling),
                Force.pounds(rolling + OUT_OF_LEVEL * weight),
                SlideStop.peak(gate, site.gate().loads().slamSpeed())));
    }

    /** What presses on all wheels together with nothing on the leaf but itself. */
    private static double mostOnWheels(List<SlideCase> cases) {
        double most = 0;
        for (SlideCase each : cases) {
            boolean still = each.combination().live() == 0
                    && !each.combination().hasWind()
                    && each.combination().dead() == 1;
            if (still)
                most = Math.max(
                        most,
                        Math.abs(each.front().down().pounds())
                                + Math.abs(each.rear().down().pounds()));
        }
        return most;
    }

    /** A post that stands in ground or on a slab; rollers on a wall are its maker's matter. */
    private Optional<SlidePost> post(Post post, PostStock stock, HoleSize hole, Offset at) {
        boolean wall = post.support()
                .match(dug -> false, driven -> false, plate -> false, socket -> false, is -> true, old -> false);
        Optional<PierSprings> foot = wall ? Optional.empty() : GateFoot.of(site, post, stock, hole);
        return foot.map(
                is -> new SlidePost(stock, at, post.outOfGround(), post.grade().minus(plan.zero()), is, pushes(post)));
    }

    /** What the fence beside a post pushes it with: half of each bay that ends at it. */
    private List<PostPush> pushes(Post post) {
        List<PostPush> pushes = new ArrayList<>();
        for (Bay bay : site.bays()) {
            if (!bay.to().equals(post.id()) && !bay.from().equals(post.id())) continue;
            site.windBeside(post, bay).ifPresent(share -> pushes.add(new PostPush(share.height(), share.force())));
        }
        return pushes;
    }

    private SlideLoads loads() {
        LeafBlows blows = LeafBlows.sliding(site, plan.leaf());
        Length tall = plan.leaf()
                .outline()
                .corners()
                .get(2)
                .z()
                .minus(plan.leaf().outline().corners().get(1).z())
                .size();
        LeafWind tail = LeafWind.alone(
                site.job().site().wind(),
                plan.shape().tail(),
                tall,
                tall.plus(site.gate().leaf().bottomGap()),
                Screen.flat(1),
                site.standards().wind());
        return new SlideLoads(
                site.gate().loads().person(),
                blows.shut(),
                blows.open(),
                blows.openIn(site.gate().loads().serviceGust()),
                tail.pressure(),
                IceCoat.on(plan.leaf(), site.gate().loads().ice()));
    }

    /** Part of the design wind that a plain gust of the design speed is, for a state of the leaf. */
    static double gustPart(GateSite site, SlidePlan plan, LeafState state) {
        return LeafBlows.sliding(site, plan.leaf()).gustPart(state == LeafState.CLOSED ? state : LeafState.OPEN);
    }
}
