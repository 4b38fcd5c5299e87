package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.Footings;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.job.GateBuild;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.HingeForce;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.PierSprings;
import plumbleaf.engine.sag.Slam;
import plumbleaf.engine.strength.HeldPost;
import plumbleaf.engine.strength.RatedGust;
import plumbleaf.engine.strength.SecondOrder;
import plumbleaf.engine.strength.WallHinges;
import plumbleaf.engine.support.Support;

/**
 * A gate with its two posts designed.
 *
 * @param gate with its load path
 * @param rear the rear roller post of a slide gate
 */
record GatePosts(GateDesign gate, PostDesign hinge, PostDesign latch, Optional<PostDesign> rear) {
    GatePosts(GateDesign gate, PostDesign hinge, PostDesign latch) {
        this(gate, hinge, latch, Optional.empty());
    }

    /** All of them. */
    List<PostDesign> posts() {
        List<PostDesign> all = new ArrayList<>(List.of(hinge, latch));
        rear.ifPresent(all::add);
        return all;
    }

    /** @param depth of both footings, where the job fixes it */
    static GatePosts of(GateSite site, GateDesign gate, Stated<Length> depth, Length forDrop, PostWork work) {
        PickedGate build = gate.build();
        Post hingePost = site.post(gate.hingePost());
        Post latchPost = site.post(gate.latchPost());
        Length hole = build.hole().diameter();
        HoleSize own = GateFoot.secondHole(site, build.hole());
        Stated<Length> ownDepth =
                pinned(site).latchDepth().isSaid() ? pinned(site).latchDepth() : depth;
        if (gate.slide().isPresent()) return SlidePosts.of(site, gate, depth, work);
        if (gate.hung().isEmpty()) {
            return new GatePosts(
                    gate,
                    work.gatePostWithoutGate(
                            hingePost, build.hingePost(), hole, depth, site.wind(), onWall(site, gate, hingePost)),
                    work.gatePostWithoutGate(
                            latchPost, build.latchPost(), own.diameter(), ownDepth, site.wind(), Optional.empty()),
                    site.roller()
                            .map(post -> work.gatePostWithoutGate(
                                    post, build.hingePost(), hole, depth, site.wind(), Optional.empty())));
        }
        PostDesign hinge = work.gatePost(
                hingePost,
                build.hingePost(),
                hole,
                depth,
                actions(gate, hingePost),
                true,
                forDrop,
                site.wind(),
                onWall(site, gate, hingePost));
        PostDesign latch = work.gatePost(
                latchPost,
                build.latchPost(),
                own.diameter(),
                ownDepth,
                actions(gate, latchPost),
                gate.hung().size() > 1,
                forDrop,
                site.wind(),
                onWall(site, gate, latchPost));
        List<Finding> more = new ArrayList<>();
        for (HungLeaf hung : gate.hung())
            if (!hung.gate().isOnWall()) more.add(SecondOrder.finding(hung.post(), hung.amplification()));
        GateDesign shown = gate;
        List<LinkUse> path = new ArrayList<>();
        for (HungLeaf hung : gate.hung()) {
            more.addAll(GateJoints.findings(hung, jointOf(hung), site.catalogue(), site.basis()));
            path.addAll(GateJoints.links(hung, jointOf(hung), site.catalogue()));
        }
        if (gate.hung().size() == 1) {
            Speed speed = Slam.edge(site.gate(), gate.hung().get(0).gate().leaf());
            BaseSpring foot = GateFoot.of(site, latchPost, build.latchPost(), own)
                    .map(PierSprings::stiff)
                    .orElse(gate.hung().get(0).gate().foot().stiff());
            SlamCheck slam = SlamCheck.of(gate.hung().get(0).gate(), build.latchPost(), foot, speed);
            shown = withSlam(
                    gate,
                    () -> slam.working(
                            latchPost.id(),
                            GateFoot.lines(site, latchPost, build.latchPost(), own, SoilBand::stiff),
                            gate.hung().get(0).gate(),
                            site.gate(),
                            foot));
            more.add(slam.finding(gate.id(), speed, site.gate(), site.mustShut()));
            gustSlam(site, gate, build, foot).ifPresent(more::add);
            LatchCheck holds = LatchCheck.of(
                    site.latch(),
                    gate.hung().get(0).cases(),
                    site.gate().loads().person(),
                    slam.peak());
            more.addAll(holds.findings(gate.id(), site.basis()));
            path.addAll(holds.links(gate.id()));
        }
        if (gate.pair().isPresent()) {
            PairDesign pair = gate.pair().get();
            LatchCheck holds = LatchCheck.of(
                    site.latch(),
                    pair.atLatch(gate.hung().get(0).cases()),
                    site.gate().loads().person(),
                    pair.slam());
            more.addAll(holds.findings(gate.id(), site.basis()));
            path.addAll(holds.links(gate.id()));
        }
        heaveApart(site, gate.id(), hinge, latch).ifPresent(more::add);
        for (PostDesign post : List.of(hinge, latch))
            WoodPostLife.finding(post, site.basis(), site.job().display()).ifPresent(more::add);
        return new GatePosts(shown.onPosts(loadPath(gate, path, hinge, latch), more), hinge, latch);
    }

    /** The blow of a single leaf beside what else is worked out of it, where the book is wanted. */
    private static GateDesign withSlam(GateDesign gate, Supplier<Working> slam) {
        HungLeaf leaf = gate.hung().get(0);
        if (leaf.workings().isEmpty()) return gate;
        List<Working> workings = new ArrayList<>(leaf.workings());
        workings.add(slam.get());
        return gate.hangingAs(leaf.with(workings));
    }

    /** What a gust makes of a leaf that nothing holds open. */
    private static Optional<Finding> gustSlam(GateSite site, GateDesign gate, PickedGate build, BaseSpring foot) {
        HungGate hung = gate.hung().get(0).gate();
        boolean free = hung.holdOpen().match(is -> true, bolt -> false, stop -> false, lock -> false);
        if (!free) return Optional.empty();
        Leaf leaf = hung.leaf();
        Speed gust = site.gate().loads().serviceGust();
        LeafHang hang = gate.plan().hang(leaf.id()).orElseThrow();
        double psf =
                LeafBlows.on(site, gate.plan(), hang).openIn(gust).pressure().psf();
        double from = leaf.outline().hingeEdge().inches();
        double to = leaf.outline().latchEdge().inches();
        double area = (to - from) * site.gate().leaf().infill().inches();
        double arm = (from + to) / 2;
        if (site.gate().hinges().closer())
            return Optional.of(SlamCheck.onCloser(gate.id(), gust, Moment.poundInches(psf / 144 * area * arm)));
        Speed edge = Slam.edgeInGust(psf, area, arm, 1, leaf.weight().inertiaLbInS2(), to);
        return Optional.of(
                SlamCheck.of(hung, build.latchPost(), foot, edge).inGust(site.gate(), gust, edge, site.mustShut()));
    }

    /** Hinges that hang on a wall, whatever is known of their pull; empty where a post carries them. */
    private static Optional<HeldPost> onWall(GateSite site, GateDesign gate, Post post) {
        Optional<Support.WallAnchor> wall = post.support()
                .match(
                        footing -> Optional.empty(),
                        driven -> Optional.empty(),
                        plate -> Optional.empty(),
                        socket -> Optional.empty(),
                        is -> Optional.of(is),
                        existing -> Optional.empty());
        if (wall.isEmpty()) return Optional.empty();
        List<WallHinges.Pull> pulls = new ArrayList<>();
        Force byHand = Force.ZERO;
        for (HungLeaf hung : gate.hung()) {
            if (!hung.post().equals(post.id())) continue;
            byHand = byHand(site, hung);
            for (CaseForces each : hung.cases())
                for (HingeForce hinge : each.hinges())
                    pulls.add(new WallHinges.Pull(
                            hinge.id(),
                            each.combination(),
                            hinge.horizontal(),
                            hinge.across(),
                            hinge.down(),
                            hung.gate().hinge().pinOffset()));
        }
        boolean hinges =
                !pulls.isEmpty() || (gate.hung().isEmpty() && gate.hingePost().equals(post.id()));
        Force pull = byHand;
        return hinges ? wall.map(of -> WallHinges.held(post.id(), of, pulls, pull)) : Optional.empty();
    }

    private static Joint jointOf(HungLeaf hung) {
        return hung.gate().leaf().make().joint();
    }

    private static Force byHand(GateSite site, HungLeaf hung) {
        Leaf leaf = hung.gate().leaf();
        return WallHinges.byHand(
                leaf.weight().wet(),
                Length.inches(leaf.weight().centreOfGravity().r().inches()),
                site.gate().loads().person(),
                leaf.width(),
                leaf.pinSpacing());
    }

    /** Frost lifts one post of a gate and not the other, or further: what a latch minds is the difference. */
    static Optional<Finding> heaveApart(GateSite site, String gate, PostDesign hinge, PostDesign latch) {
        SoilKind soil = site.job().site().soil().kind();
        boolean freezes = (soil == SoilKind.CLAY || soil == SoilKind.SILT)
                && !site.job().site().frost().depth().isZero();
        boolean alike = hinge.post().support().equals(latch.post().support())
                && hinge.depth().equals(latch.depth());
        if (!freezes || alike) return Optional.empty();
        return Optional.of(Checked.note(
                "gate.heave",
                Severity.CAUTION,
                gate,
                gate
                        + ": its two posts are not held alike in ground that freezes, so frost may lift one past the"
                        + " other by more than the latch takes. Same depth and same sleeve at both, a tie between them"
                        + " below grade, or a latch with more reach.",
                Basis.commonPractice("difference of heave between hinge and latch")));
    }

    /** What the leaves bring to a post: the one that hangs on it, and the one that latches to it. */
    private static List<CombinedAction> actions(GateDesign gate, Post post) {
        List<CombinedAction> actions = new ArrayList<>();
        for (HungLeaf hung : gate.hung()) {
            if (hung.post().equals(post.id())) for (CaseForces each : hung.cases()) actions.add(each.onHingePost());
            if (hung.latchPost().filter(post.id()::equals).isPresent())
                for (CaseForces each : hung.cases()) actions.add(each.onLatchPost());
        }
        return actions;
    }

    /** The same with the gust its links stand. A search over builds does not ask for it. */
    GatePosts rated(GateSite site) {
        boolean dug = posts().stream().anyMatch(post -> post.footing().isPresent());
        if (dug
                && !Footings.isGroundKnown(
                        site.job().site().soil(), site.standards().soil())) return this;
        if (gate.slide().isPresent()) return SlidePosts.rated(site, this);
        if (gate.hung().isEmpty()) return this;
        HungLeaf first = gate.hung().get(0);
        HungLeaf last = gate.hung().get(gate.hung().size() - 1);
        GateGust gust = new GateGust(site, gate.plan(), first);
        GateGust other = new GateGust(site, gate.plan(), last);
        RatedGust onHingePost = gust.post(hinge, CaseForces::hingePost, footing(site, hinge));
        RatedGust onLatchPost = other.post(
                latch,
                last.latchPost().isPresent() ? CaseForces::latchPost : CaseForces::hingePost,
                footing(site, latch));
        RatedGust firstLeaf = gust.leaf(jointOf(first), site.catalogue());
        RatedGust lastLeaf = other.leaf(jointOf(last), site.catalogue());
        RatedGust leaves = firstLeaf.lesser(lastLeaf);
        if (gate.pair().isPresent()) leaves = leaves.lesser(gust.rod(gate.pair().get()));
        List<CaseForces> atLatch =
                gate.pair().map(pair -> pair.atLatch(first.cases())).orElse(first.cases());
        leaves = gust.latch(site.latch(), atLatch).map(leaves::lesser).orElse(leaves);
        RatedGust whole = leaves.lesser(onHingePost).lesser(onLatchPost);
        GateDesign byLeaf = gate.ratedLeaves(firstLeaf.lesser(onHingePost), lastLeaf.lesser(onLatchPost));
        return new GatePosts(byLeaf.rated(whole), hinge.rated(onHingePost), latch.rated(onLatchPost));
    }

    static Optional<FootingGust> footing(GateSite site, PostDesign post) {
        return post.footing()
                .map(is -> new FootingGust(
                        is,
                        site.job()
                                .soilAt(post.post().run(), post.post().station().inches()),
                        site.standards()))
                .filter(FootingGust::isKnown);
    }

    private static GateBuild pinned(GateSite site) {
        return site.job().builds().of(site.gate());
    }

    /** The deeper of what its two footings need, which are dug alike unless the job tells the latch post's own depth. Zero where neither is dug. */
    Length depth(GateSite site) {
        Length deepest = Length.ZERO;
        List<PostDesign> alike = new ArrayList<>(posts());
        if (pinned(site).latchDepth().isSaid()) alike.remove(latch);
        for (PostDesign post : alike)
            if (!post.hole().isZero() && post.depth().compareTo(deepest) > 0) deepest = post.depth();
        return deepest;
    }

    /** Every link from the leaf to the soil, weakest first. Wood is never one: it stiffens nothing and carries nothing but itself. */
    private static List<LinkUse> loadPath(GateDesign gate, List<LinkUse> joints, PostDesign hinge, PostDesign latch) {
        List<LinkUse> path = new ArrayList<>(joints);
        for (HungLeaf hung : gate.hung()) {
            GateStrength.FrameUse frame = GateStrength.frame(hung, true);
            path.add(new LinkUse(
                    "leaf frame",
                    frame.member(),
                    frame.utilisation(),
                    HingeJoint.name(frame.worst()),
                    GateStrength.work(hung, frame)));
            for (HingeUse use : hung.hinges())
                use.utilisation()
                        .ifPresent(ratio -> path.add(new LinkUse(
                                "hinge",
                                use.id(),
                                ratio,
                                HingeJoint.name(use.worst()),
                                HingeChecks.work(use, hung.gate().hinge()))));
        }
        gate.pair().ifPresent(pair -> path.addAll(PairLinks.of(gate.id(), pair)));
        boolean single = gate.hung().size() == 1;
        for (PostDesign post : List.of(hinge, latch)) {
            String name = post.equals(hinge) || !single ? "hinge post" : "latch post";
            path.addAll(links(name, post));
        }
        path.sort(LinkUse.WEAKEST_FIRST);
        return path;
    }

    /** Steel and footing of a post, or what holds it, as links. */
    static List<LinkUse> links(String name, PostDesign post) {
        List<LinkUse> links = new ArrayList<>();
        for (Checkpoint check : post.checks())
            links.add(
                    switch (check.check()) {
                        case "steel", "wood" ->
                            new LinkUse(
                                    name,
                                    post.id(),
                                    check.utilisation(),
                                    post.check().governing().name(),
                                    PostLinks.steel(post));
                        case "footing" ->
                            new LinkUse(
                                    name + " footing",
                                    post.footingId(),
                                    check.utilisation(),
                                    PostLinks.footingCase(post),
                                    PostLinks.footing(post));
                        default -> link(name + " support", post.id(), check, post, PostLinks.support(post, check));
                    });
        return links;
    }

    private static LinkUse link(String name, String part, Checkpoint check, PostDesign post, LinkWork work) {
        return new LinkUse(name, part, check.utilisation(), PostLinks.inCase(post), work);
    }
}
