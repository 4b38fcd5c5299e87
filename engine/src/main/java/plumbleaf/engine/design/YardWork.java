package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.gate.GroundUnder;
import plumbleaf.engine.gate.RememberedGround;
import plumbleaf.engine.gate.RunGround;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.Levelled;
import plumbleaf.engine.ground.NearGround;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.GatePlace;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.line.RunLines;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.strength.GustPart;
import plumbleaf.engine.strength.RatedGust;

/** One pass over a yard with every build picked: its fence, and the gates in it. What a search tries again and again. */
final class YardWork {
    private final Job job;
    private final Catalogue catalogue;
    private final Standards standards;
    private final Picks picks;
    private final DesignMemory memory;
    private final FenceWork fence;
    private final Map<String, NearGround> nearby = new LinkedHashMap<>();
    private final Map<String, List<Post>> postsOfGates = new LinkedHashMap<>();

    YardWork(Job job, Catalogue catalogue, Standards standards, Picks picks, DesignMemory memory) {
        this.job = job;
        this.catalogue = catalogue;
        this.standards = standards;
        this.picks = picks;
        this.memory = memory;
        Job bare = job.ofLines();
        DesignMemory.Surveyed surveyed = memory.lines(new DesignMemory.LinesQuestion(bare), YardWork::surveyed);
        FenceWork.Question asked = new FenceWork.Question(bare, picks.runs(), places());
        this.fence = memory.fence(asked, () -> new FenceWork(asked, surveyed, catalogue, standards));
        for (Post post : layout().posts()) {
            if (!post.gate().isEmpty())
                postsOfGates
                        .computeIfAbsent(post.gate(), id -> new ArrayList<>())
                        .add(post);
        }
    }

    private List<GatePlace> places() {
        return job.gates().stream()
                .map(gate -> picks.place(gate, job.run(gate.run())))
                .toList();
    }

    private static DesignMemory.Surveyed surveyed(Job job) {
        List<RunLine> lines = RunLines.of(job);
        Levelled levelled = Levelled.of(job.ground(), job.display());
        return new DesignMemory.Surveyed(lines, Ground.of(job.ground(), levelled, lines, job.display()));
    }

    Ground ground() {
        return fence.ground();
    }

    Layout layout() {
        return fence.layout();
    }

    RunWind wind(Run run) {
        return fence.wind(run);
    }

    /** Whether both posts of a gate found a place. */
    boolean stands(Gate gate) {
        return postsOf(gate, PostRole.GATE).size() == 2;
    }

    private List<Post> postsOf(Gate gate, PostRole role) {
        return postsOfGates.getOrDefault(gate.id(), List.of()).stream()
                .filter(post -> post.role() == role)
                .toList();
    }

    private GateQuestion question(Gate gate) {
        List<Post> posts = postsOf(gate, PostRole.GATE);
        Post first = posts.get(0);
        Post second = posts.get(1);
        List<Bay> before = fence.bays().endingAt(first);
        List<Bay> after = fence.bays().beginningAt(second);
        Run run = job.run(gate.run());
        return new GateQuestion(
                job.ofGate(gate),
                fence.line(run),
                near(layout().run(run.id()), postsOfGates.getOrDefault(gate.id(), List.of())),
                first,
                second,
                postsOf(gate, PostRole.ROLLER).stream().findFirst(),
                List.of(before, after),
                wind(run).blowing());
    }

    /** What posts ask of their run's layout: the bays beside them; where fabric is stretched, from which terminal to which. */
    private RunLayout near(RunLayout run, List<Post> posts) {
        if (run.style().filter(PostWork::isWoven).isPresent()) return run;
        List<Bay> bays = new ArrayList<>();
        for (Post post : posts) {
            for (Bay bay : fence.bays().ofItsRun(post)) if (!bays.contains(bay)) bays.add(bay);
        }
        return new RunLayout(run.run(), run.line(), posts, bays, run.proven(), run.style());
    }

    private GroundUnder groundOf(Gate gate) {
        Run run = job.run(gate.run());
        RunLine line = fence.line(run);
        return new RunGround(near(line), run.crossSlope().value().orElse(Slope.ZERO));
    }

    private NearGround near(RunLine line) {
        return nearby.computeIfAbsent(line.id(), id -> NearGround.of(ground(), line));
    }

    /**
     * A gate with its posts. Where the job does not fix the depth of its footings, they are made as deep as load, frost and the allowed drop ask, and the gate is
     * worked out again on them.
     */
    GatePosts gate(Gate gate) {
        Stated<Length> depth = job.builds().of(gate).depth();
        PickedGate pick = picks.of(gate);
        if (picks.chosen().contains(gate.id())) depth = Stated.of(pick.hole().depth());
        DesignMemory.HungQuestion asked = new DesignMemory.HungQuestion(question(gate), pick, depth, true);
        return memory.gate(asked, groundOf(gate), ground -> hung(asked, ground, wind(job.run(gate.run()))));
    }

    private GatePosts hung(DesignMemory.HungQuestion asked, GroundUnder under, RunWind wind) {
        GateSite site = asked.gate().site(under, wind, catalogue, standards);
        PostWork posts = asked.gate().posts(catalogue, standards);
        PickedGate pick = asked.pick();
        if (asked.depth().isSaid())
            return GatePosts.of(site, GateWork.design(site, pick), asked.depth(), Length.ZERO, posts)
                    .rated(site);
        Length forDrop = GateWork.depthForDrop(site, pick);
        GatePosts sized = GatePosts.of(site, GateWork.design(site, pick), asked.depth(), forDrop, posts);
        if (sized.depth(site).isZero()) return sized.rated(site);
        PickedGate deep = pick.withDepth(sized.depth(site));
        return GatePosts.of(site, GateWork.design(site, deep), Stated.of(sized.depth(site)), forDrop, posts)
                .rated(site);
    }

    List<GatePosts> gates() {
        return job.gates().stream().map(this::gate).toList();
    }

    /** The gates drawn and not hung: what a price alone needs. */
    List<GatePosts> unhungGates() {
        List<GatePosts> gates = new ArrayList<>();
        for (Gate gate : job.gates()) gates.add(unhung(gate));
        return gates;
    }

    /** Those of its gates that find a place, drawn and not hung. */
    List<GateDesign> drawnGates() {
        return job.gates().stream()
                .filter(this::stands)
                .map(gate -> unhung(gate).gate())
                .toList();
    }

    private GatePosts unhung(Gate gate) {
        PickedGate pick = picks.of(gate);
        Stated<Length> depth = Stated.of(pick.hole().depth());
        DesignMemory.HungQuestion asked = new DesignMemory.HungQuestion(question(gate), pick, depth, false);
        return memory.gate(asked, groundOf(gate), ground -> {
            GateSite site = asked.gate().site(ground, wind(job.run(gate.run())), catalogue, standards);
            PostWork posts = asked.gate().posts(catalogue, standards);
            GateDesign design =
                    gate.ground().regrade() ? GateWork.unhungOverShavedGround(site, pick) : GateWork.unhung(site, pick);
            return GatePosts.of(site, design, depth, Length.ZERO, posts);
        });
    }

    /** The search for the cheapest build of a gate that passes. */
    GateChoice choose(Gate gate, PriceBook book, List<GateChoice> before) {
        DesignMemory.ChoiceQuestion asked = new DesignMemory.ChoiceQuestion(question(gate), kindsOfHoles(gate, before));
        return memory.choice(
                asked,
                groundOf(gate),
                ground -> GateChoice.of(gate.id(), searches(asked, ground, book, HangingAsked.NOTHING)));
    }

    /** The same over every way to hang it that is in question. */
    List<GateSearch> searches(Gate gate, PriceBook book, List<GateChoice> before, HangingAsked hanging) {
        DesignMemory.ChoiceQuestion asked = new DesignMemory.ChoiceQuestion(question(gate), kindsOfHoles(gate, before));
        GroundUnder ground = RememberedGround.of(groundOf(gate));
        return searches(asked, ground, book, hanging);
    }

    private List<GateSearch> searches(
            DesignMemory.ChoiceQuestion asked, GroundUnder ground, PriceBook book, HangingAsked hanging) {
        GateQuestion question = asked.gate();
        RunWind wind = wind(job.run(question.job().gates().get(0).run()));
        GateSite site = question.site(ground, wind, catalogue, standards);
        PostWork posts = question.posts(catalogue, standards);
        return hanging.ways(site).stream()
                .map(way -> new GateSearch(way.site(), book, posts, asked.dug(), way.hanging()))
                .toList();
    }

    /** The holes whose size is settled without this gate: of runs and gates that say theirs, and of gates chosen before it. */
    private List<HoleSize> kindsOfHoles(Gate gate, List<GateChoice> before) {
        List<HoleSize> kinds = new ArrayList<>();
        for (Run run : job.runs()) {
            PickedRun pick = picks.of(run);
            pick.depth().value().ifPresent(depth -> kinds.add(new HoleSize(pick.hole(), depth)));
            for (PickedRun.OfSide side : pick.sides())
                side.depth().value().ifPresent(depth -> kinds.add(new HoleSize(side.hole(), depth)));
        }
        for (Gate other : job.gates()) {
            if (!other.id().equals(gate.id()) && !job.builds().of(other).isOpen())
                kinds.add(picks.of(other).hole());
        }
        for (GateChoice choice : before)
            choice.choice().cheapest().ifPresent(best -> kinds.add(best.build().hole()));
        return kinds;
    }

    /** Rails and picket screws, the worst of each run. */
    List<Finding> bayFindings() {
        List<Finding> findings = new ArrayList<>();
        BayWork work = new BayWork(job, catalogue);
        for (Run run : job.runs())
            findings.addAll(work.of(run, layout().run(run.id()).bays(), wind(run)));
        return findings;
    }

    /** How much of their strength the rails of every bay of a run take. */
    List<BayWork.RailUse> railUses(Run run) {
        return new BayWork(job, catalogue).railUses(run, layout().run(run.id()).bays(), wind(run));
    }

    /** The greatest spacing that the wind leaves the posts of each run. */
    List<Finding> spacingFindings() {
        return fence.spacingFindings();
    }

    /** Fences beside a drop. */
    List<Finding> guardFindings(List<GateDesign> gates) {
        return new GuardChecks(
                        job,
                        ground(),
                        layout(),
                        new BayWork(job, catalogue),
                        gates,
                        standards.rules().shownIn(job.display()))
                .findings();
    }

    /** The gust that the rails of the whole yard stand; empty where no wind reaches one. */
    Optional<RatedGust> railGust() {
        List<GustPart> parts = new ArrayList<>();
        BayWork work = new BayWork(job, catalogue);
        for (Run run : job.runs())
            parts.addAll(work.rails(run, layout().run(run.id()).bays(), wind(run)));
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of(RatedGust.of(job.site().wind().speed(), parts));
    }

    /** Every new post along the walk, those of the gates as already designed. */
    List<PostDesign> posts(List<GatePosts> gates) {
        Map<String, PostDesign> ofGates = new LinkedHashMap<>();
        for (GatePosts gate : gates) for (PostDesign post : gate.posts()) ofGates.put(post.id(), post);
        List<PostDesign> designs = new ArrayList<>();
        for (Post post : layout().posts()) {
            if (post.gate().isEmpty()) designs.add(fence.post(post));
            else if (ofGates.containsKey(post.id())) designs.add(ofGates.get(post.id()));
        }
        return designs;
    }
}
