package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.Combinations;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceInfill;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.footing.DepthNeed;
import plumbleaf.engine.footing.FootingDemand;
import plumbleaf.engine.footing.FootingDesign;
import plumbleaf.engine.footing.Footings;
import plumbleaf.engine.footing.Heave;
import plumbleaf.engine.footing.LateralSoil;
import plumbleaf.engine.footing.PoleDepth;
import plumbleaf.engine.footing.PoleStrength;
import plumbleaf.engine.footing.Pour;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Guarded;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BaysBeside;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.line.Terminals;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.strength.BasePlateHold;
import plumbleaf.engine.strength.ExistingHold;
import plumbleaf.engine.strength.FabricTension;
import plumbleaf.engine.strength.GustPart;
import plumbleaf.engine.strength.HeldPost;
import plumbleaf.engine.strength.PostCheck;
import plumbleaf.engine.strength.PostStrength;
import plumbleaf.engine.strength.RatedGust;
import plumbleaf.engine.strength.SocketHold;
import plumbleaf.engine.strength.WallHinges;
import plumbleaf.engine.support.Support;
import plumbleaf.engine.wind.TributaryWind;

/** Designs posts: what acts at grade, the steel, the footing, the rated gust. */
final class PostWork {
    private final Job job;
    private final Catalogue catalogue;
    private final Standards standards;
    private final Layout layout;
    private final BaysBeside bays;
    private final Map<String, Terminals> terminals = new LinkedHashMap<>();

    PostWork(Job job, Catalogue catalogue, Standards standards, Layout layout) {
        this.job = job;
        this.catalogue = catalogue;
        this.standards = standards;
        this.layout = layout;
        this.bays = BaysBeside.of(layout);
    }

    BaysBeside bays() {
        return bays;
    }

    /** A line, end, corner or wall post with half of each bay beside it. */
    PostDesign linePost(Post post, PickedRun pick, RunWind wind) {
        Share share = share(post, wind);
        Optional<Terminals.Terminal> terminal = terminal(post);
        double at = post.station().inches();
        PostStock stock = post.role() != PostRole.LINE || terminal.isPresent() ? pick.terminalAt(at) : pick.postAt(at);
        List<CombinedAction> actions = new ArrayList<>(ofFence(post, stock, share));
        actions.addAll(guarding(post, stock));
        return design(
                post, stock, pick.holeAt(at), pick.depthAt(at), actions, share, true, Length.ZERO, Optional.empty());
    }

    /** What the fence beside a post does to it, and its own weight. */
    private List<CombinedAction> ofFence(Post post, PostStock section, Share share) {
        BaseAction dead = BaseAction.weight(weight(post, section)).plus(stretched(post));
        BaseAction windIn = share.design()
                .map(on -> BaseAction.across(on.force().times(-1), on.height()))
                .orElse(BaseAction.NONE);
        return Combinations.of("fence", dead, BaseAction.NONE, windIn);
    }

    /** People against the top of a guard, towards either side. */
    private List<CombinedAction> guarding(Post post, PostStock section) {
        List<CombinedAction> all = new ArrayList<>();
        for (Guarded guard : job.rules().guards()) {
            boolean beside = guard.holds(post.run(), post.station().inches());
            if (!beside || !GuardLoad.asked(guard)) continue;
            BaseAction dead = BaseAction.weight(weight(post, section)).plus(stretched(post));
            Length half = halfBays(post).plus(halfOpening(post));
            BaseAction live = BaseAction.across(GuardLoad.on(guard, half), post.outOfGround());
            all.addAll(Combinations.of("guard", dead, live, BaseAction.NONE));
            all.addAll(Combinations.of("guard", dead, live.times(-1), BaseAction.NONE));
        }
        return all.stream().filter(one -> !one.combination().hasWind()).toList();
    }

    /** A closed gate leans on both its posts. */
    private Length halfOpening(Post post) {
        return job.gates().stream()
                .filter(gate -> gate.id().equals(post.gate()))
                .findFirst()
                .map(gate -> gate.opening().times(0.5))
                .orElse(Length.ZERO);
    }

    private Length halfBays(Post post) {
        double length = 0;
        for (Bay bay : layout.bays()) {
            boolean beside = bay.run().equals(post.run())
                    && (bay.from().equals(post.id()) || bay.to().equals(post.id()));
            if (beside) length += bay.level().inches() / 2;
        }
        return Length.inches(length);
    }

    private Optional<Terminals.Terminal> terminal(Post post) {
        return fabricOf(post).isEmpty()
                ? Optional.empty()
                : terminals
                        .computeIfAbsent(post.run(), run -> Terminals.of(layout.run(run)))
                        .at(post.id());
    }

    private Optional<FenceInfill.Fabric> fabricOf(Post post) {
        return catalogue.style(job.run(post.run()).style()).flatMap(PostWork::fabricIn);
    }

    private static Optional<FenceInfill.Fabric> fabricIn(FenceStyle style) {
        return style.infill()
                .match(
                        up -> Optional.empty(),
                        both -> Optional.empty(),
                        lying -> Optional.empty(),
                        panel -> Optional.empty(),
                        Optional::of,
                        mesh -> Optional.empty());
    }

    /** Whether fabric is stretched along a fence of this style. */
    static boolean isWoven(FenceStyle style) {
        return fabricIn(style).isPresent();
    }

    /** What stretched fabric does to a terminal: along the run where it ends, into the turn where it turns, nothing where it goes on. */
    private BaseAction stretched(Post post) {
        Optional<Terminals.Terminal> terminal = terminal(post);
        if (terminal.isEmpty() || terminal.get().reason() == Terminals.Reason.GATE) return BaseAction.NONE;
        BaseAction end = atEnd(post);
        if (terminal.get().sides() == 1) return end;
        double into = 2 * StrictMath.sin(terminal.get().turn().radians() / 2);
        return new BaseAction(
                Force.ZERO,
                Force.ZERO,
                end.along().times(into),
                Moment.ZERO,
                end.momentAlong().times(into),
                Moment.ZERO);
    }

    /** The pull of fabric that ends on a post, along the run. */
    private BaseAction atEnd(Post post) {
        Run run = job.run(post.run());
        boolean topRail = catalogue
                .style(run.style())
                .map(style -> style.railsFor(run.infill()) > 0)
                .orElse(false);
        FabricTension tension = FabricTension.usual(run.infill(), run.bottomGap());
        return new BaseAction(
                Force.ZERO, tension.atBase(topRail), Force.ZERO, tension.atGrade(topRail), Moment.ZERO, Moment.ZERO);
    }

    /**
     * With the pull of the fence's own fabric on a gate post, away from the opening, and without it: fabric slackens, and then what it took off the leaf's own pull is
     * no longer there.
     *
     * @param hangs whether the leaf hangs on it, so that the opening lies on the side the gate's axes count as +
     */
    private List<CombinedAction> withFabric(Post post, List<CombinedAction> actions, boolean hangs) {
        boolean ends = terminal(post).isPresent() && halfBays(post).inches() > 0;
        if (!ends) return actions;
        BaseAction pull = atEnd(post).times(hangs ? -1 : 1);
        List<CombinedAction> both = new ArrayList<>(actions);
        for (CombinedAction each : actions)
            both.add(new CombinedAction(
                    each.combination(), each.state(), each.wind(), each.action().plus(pull)));
        return both;
    }

    /** A post of a gate whose own forces are not worked out: the fence beside it and its own weight, nothing of the gate. */
    PostDesign gatePostWithoutGate(
            Post post, PostStock section, Length hole, Stated<Length> depth, RunWind wind, Optional<HeldPost> hinges) {
        Share share = share(post, wind);
        List<CombinedAction> actions = withFabric(post, ofFence(post, section, share), true);
        return design(post, section, hole, depth, actions, share, false, Length.ZERO, hinges);
    }

    /**
     * A post of a gate.
     *
     * @param hangs whether a leaf hangs on it; else one latches to it
     * @param forDrop depth that keeps the gate's drop within its limit
     * @param hinges what hinges on a wall do to it; empty where there is a post
     */
    PostDesign gatePost(
            Post post,
            PostStock section,
            Length hole,
            Stated<Length> depth,
            List<CombinedAction> actions,
            boolean hangs,
            Length forDrop,
            RunWind wind,
            Optional<HeldPost> hinges) {
        List<CombinedAction> all = new ArrayList<>(withFabric(post, actions, hangs));
        all.addAll(guarding(post, section));
        return design(post, section, hole, depth, all, share(post, wind), false, forDrop, hinges);
    }

    /**
     * Wind on a post's half bays, each as high as it was built: as the standard designs for, and as a plain gust of the same speed.
     *
     * @param top of the higher of them over the ground at the post
     */
    private record Share(Optional<TributaryWind> design, Optional<TributaryWind> gust, Length top) {}

    private Share share(Post post, RunWind wind) {
        Run run = job.run(post.run());
        Offset at = Offset.inches(post.station().inches());
        List<RunWind.Piece> pieces = new ArrayList<>();
        AsBuilt most = AsBuilt.asked(run);
        for (Bay bay : bays.ofItsRun(post)) {
            Offset half = Offset.inches(bay.level().inches() / 2);
            AsBuilt built = AsBuilt.besidePost(run, bay, post);
            most = most.most(built);
            if (bay.to().equals(post.id())) pieces.add(0, new RunWind.Piece(at.minus(half), at, built));
            if (bay.from().equals(post.id())) pieces.add(new RunWind.Piece(at, at.plus(half), built));
        }
        return new Share(wind.on(pieces), wind.gustOn(pieces), most.top());
    }

    private Force weight(Post post, PostStock section) {
        Run run = job.run(post.run());
        double pounds = section.weightOf(post.outOfGround()).pounds();
        Optional<FenceStyle> style = catalogue.style(run.style());
        if (style.isPresent()) {
            for (Bay bay : bays.ofItsRun(post))
                pounds += BayWeight.of(bay, style.get(), catalogue).pounds() / 2;
        }
        return Force.pounds(pounds);
    }

    private PostDesign design(
            Post post,
            PostStock section,
            Length hole,
            Stated<Length> depth,
            List<CombinedAction> actions,
            Share share,
            boolean halfInchDoesNoHarm,
            Length forDrop,
            Optional<HeldPost> hinges) {
        Standing at = new Standing(post, section, actions, share, halfInchDoesNoHarm);
        return post.support()
                .match(
                        footing -> dug(at, hole, depth, forDrop, footing),
                        driven ->
                                dug(at, section.depth(), Stated.of(driven.depth()), forDrop, new Support.NewFooting()),
                        plate -> held(
                                at,
                                section.match(
                                        steel -> BasePlateHold.of(post.id(), steel, plate, actions, basis(post)),
                                        wood -> HeldPost.ofWood(post.id(), "a plate on a slab")),
                                post.outOfGround(),
                                true),
                        socket -> held(
                                at,
                                SocketHold.held(post.id(), section, socket, actions, basis(post)),
                                post.outOfGround().plus(socket.depth()),
                                true),
                        wall -> held(
                                at,
                                hinges.orElseGet(() -> WallHinges.along(post.id(), wall, mostPush(actions))),
                                post.role() == PostRole.WALL ? post.outOfGround() : Length.ZERO,
                                false),
                        existing -> held(
                                at,
                                ExistingHold.held(
                                        post.id(),
                                        existing,
                                        section,
                                        GateFoot.band(job, catalogue, standards),
                                        actions),
                                post.outOfGround().plus(existing.embedment()),
                                true));
    }

    /** A post and what acts on it, whatever holds it. */
    private record Standing(
            Post post, PostStock section, List<CombinedAction> actions, Share share, boolean halfInchDoesNoHarm) {}

    private static Optional<Force> mostPush(List<CombinedAction> actions) {
        return actions.stream()
                .map(one -> one.action().push())
                .reduce((one, other) -> other.compareTo(one) > 0 ? other : one);
    }

    /** A post that stands on or in something which nobody digs. */
    private PostDesign held(Standing at, HeldPost held, Length length, boolean cantilever) {
        PostCheck check = PostCheck.of(at.post.id(), at.section, at.post.outOfGround(), at.actions, basis(at.post));
        List<Finding> findings = new ArrayList<>();
        List<Checkpoint> checks = new ArrayList<>();
        if (cantilever) {
            findings.addAll(check.findings());
            checks.add(new Checkpoint(at.section.match(steel -> "steel", wood -> "wood"), check.utilisation()));
        }
        findings.addAll(held.findings());
        checks.add(new Checkpoint("support", held.utilisation()));
        Optional<RatedGust> rated = cantilever
                ? at.share
                        .gust()
                        .map(gust -> RatedGust.of(job.site().wind().speed(), List.of(steel(at.post, at.section, gust))))
                : Optional.empty();
        return new PostDesign(
                at.post,
                at.section,
                Optional.empty(),
                held,
                length,
                Pour.NONE,
                worked(at),
                at.actions,
                check,
                checks,
                rated,
                findings);
    }

    /** A post in a hole, or driven: then its own width is the hole and it takes no concrete. */
    private PostDesign dug(Standing at, Length hole, Stated<Length> depth, Length forDrop, Support.NewFooting kind) {
        Post post = at.post;
        PostStock section = at.section;
        List<CombinedAction> actions = at.actions;
        DesignBasis basis = basis(post);
        PostCheck check = PostCheck.of(post.id(), section, post.outOfGround(), actions, basis);
        FootingDemand demand =
                new FootingDemand(footingId(post), actions, at.halfInchDoesNoHarm, kind.slabAtGrade(), forDrop);
        FootingDesign footing = Footings.size(
                demand, hole, depth, soil(post), job.site().frost(), standards.soil(), standards.footing(), basis);
        Optional<RatedGust> rated = at.share
                .gust()
                .filter(gust -> Footings.isGroundKnown(soil(post), standards.soil()))
                .map(gust -> rated(post, section, footing, gust, at.halfInchDoesNoHarm));
        List<Finding> findings = new ArrayList<>(check.findings());
        findings.addAll(footing.findings());
        List<Checkpoint> checks = List.of(
                new Checkpoint(section.match(steel -> "steel", wood -> "wood"), check.utilisation()),
                new Checkpoint("footing", mostNeeded(footing)));
        boolean driven = post.support()
                .match(dug -> false, is -> true, plate -> false, socket -> false, wall -> false, existing -> false);
        Area outline = Area.squareInches(
                section.isRound()
                        ? Math.PI * section.depth().inches() * section.depth().inches() / 4
                        : section.depth().inches() * section.width().inches());
        Pour concrete = driven ? Pour.NONE : Pour.of(footing.hole(), outline, kind.bell());
        heave(footing, concrete, actions, kind, driven).ifPresent(findings::add);
        return new PostDesign(
                post,
                section,
                Optional.of(footing),
                HeldPost.NOTHING,
                post.outOfGround().plus(footing.hole().depth()),
                concrete,
                worked(at),
                actions,
                check,
                checks,
                rated,
                findings);
    }

    private Optional<WindWork> worked(Standing at) {
        return at.share.design().map(on -> WindWork.of(on, job.site().wind(), at.share.top(), standards.wind()));
    }

    /** Only fine soil grips a shaft when it freezes: clean sand and gravel drain, and rock does not heave. */
    private Optional<Finding> heave(
            FootingDesign footing,
            Pour concrete,
            List<CombinedAction> actions,
            Support.NewFooting kind,
            boolean driven) {
        SoilKind soil = job.site().soil().kind();
        Length frost = job.site().frost().depth();
        boolean heaves = (soil == SoilKind.CLAY || soil == SoilKind.SILT) && !frost.isZero();
        if (!heaves) return Optional.empty();
        double standing = Double.MAX_VALUE;
        for (CombinedAction each : actions)
            if (each.combination() == Combination.D)
                standing = Math.min(standing, each.action().down().pounds());
        if (standing == Double.MAX_VALUE) standing = 0;
        Force weight = concrete.weight().plus(Force.pounds(Math.max(0, standing)));
        return Optional.of(
                new Heave(footing.hole(), frost, weight, kind.bell(), kind.sleeve(), driven, standards.soil())
                        .finding(footing.part()));
    }

    private static String footingId(Post post) {
        return "F" + post.id().substring(1);
    }

    /** Needed over provided, every need counted. */
    private static double mostNeeded(FootingDesign footing) {
        double most = 0;
        for (DepthNeed need : footing.needs())
            most = Math.max(most, need.depth().inches() / footing.hole().depth().inches());
        return most;
    }

    private Soil soil(Post post) {
        return job.soilAt(post.run(), post.station().inches());
    }

    private DesignBasis basis(Post post) {
        return job.basisAt(job.run(post.run()), post.station().inches());
    }

    /** The gust at which post and footing reach their limits; ultimate of the post is its nominal strength. */
    private RatedGust rated(
            Post post, PostStock section, FootingDesign footing, TributaryWind gust, boolean halfInchDoesNoHarm) {
        List<GustPart> parts = new ArrayList<>();
        parts.add(steel(post, section, gust));
        LateralSoil soil = LateralSoil.of(soil(post), standards.soil(), halfInchDoesNoHarm);
        double depthIn = footing.hole().depth().inches() - soil.looseTop().inches();
        Optional<Force> ultimate = PoleStrength.expected(footing.hole(), gust.height(), soil(post), standards.soil());
        if (depthIn > 0 && soil.perFoot().psf() > 0 && ultimate.isPresent()) {
            Length height = gust.height().plus(soil.looseTop());
            Force allowed = PoleDepth.allowedPush(
                    Length.inches(depthIn),
                    height,
                    soil.perFoot(),
                    footing.hole().diameter());
            parts.add(new GustPart(
                    "footing " + footing.part(),
                    0,
                    gust.force().pounds(),
                    allowed.pounds(),
                    ultimate.get().pounds()));
        }
        return RatedGust.of(job.site().wind().speed(), parts);
    }

    private static GustPart steel(Post post, PostStock section, TributaryWind gust) {
        PostStrength strength = PostStrength.of(section);
        return new GustPart(
                "post " + post.id(),
                0,
                gust.momentAtGrade().poundInches(),
                strength.allowableInWind().poundInches(),
                strength.ultimateInWind().poundInches());
    }
}
