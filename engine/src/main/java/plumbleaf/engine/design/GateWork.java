package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.DepthForDrop;
import plumbleaf.engine.footing.FootingRules;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.gate.GateAsk;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Gates;
import plumbleaf.engine.gate.IceCoat;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.gate.Opening;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.LeafDrops;
import plumbleaf.engine.sag.PierSprings;
import plumbleaf.engine.sag.PostPush;
import plumbleaf.engine.sag.Sags;
import plumbleaf.engine.sag.ShutAt;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.wind.TributaryWind;

/** Designs one gate with one build: plan, sag, forces, footing, findings. */
final class GateWork {
    /** Depths tried when the drop asks for more: no hole of a gate post is dug deeper by an ordinary crew. Judgement. */
    private static final Length DEEPEST = Length.feet(8);

    private final GateSite site;
    private final PickedGate build;
    private final Gate gate;
    private final DisplayUnits display;

    private final boolean searching;

    private GateWork(GateSite site, PickedGate build) {
        this(site, build, false);
    }

    /** @param searching whether what only cautions may be left out */
    private GateWork(GateSite site, PickedGate build, boolean searching) {
        this.site = site;
        this.build = build;
        this.searching = searching;
        this.gate = site.gate();
        this.display = site.job().display();
    }

    static GateDesign design(GateSite site, PickedGate build) {
        return new GateWork(site, build).design();
    }

    /** The plan of a build without remedies: enough to hang it. */
    static GatePlan judged(GateSite site, PickedGate build) {
        return Gates.judged(new GateWork(site, build).ask(Length.ZERO));
    }

    static GateParts parts(GateSite site, PickedGate build) {
        return new GateWork(site, build).parts();
    }

    /** A design on a plan that stands already, without how the leaves sway: what a search over builds looks at. */
    static GateDesign designOn(GateSite site, PickedGate build, GatePlan plan) {
        GateWork work = new GateWork(site, build, true);
        if (plan.slide().isPresent())
            return work.slidingOn(plan, SlideWork.of(site, build, plan.slide().get()));
        Hanging hung = work.hang(plan);
        return hung.leaves().isEmpty() ? work.plain(plan) : work.hungDesign(plan, hung);
    }

    /** The same of a slide, looked at where it strains most: what fails so fails. */
    static GateDesign slideAtItsEnds(GateSite site, PickedGate build, GatePlan plan) {
        return new GateWork(site, build, true)
                .slidingOn(plan, SlideWork.atItsEnds(site, build, plan.slide().orElseThrow()));
    }

    /** Leaves and posts, and nothing of how they hang nor whether they may: what a price needs. */
    static GateDesign unhung(GateSite site, PickedGate build) {
        GateWork work = new GateWork(site, build);
        return work.plain(Gates.laid(work.ask(Length.ZERO)));
    }

    /** The same where ground is shaved under it: how much depends on how far its leaves drop. */
    static GateDesign unhungOverShavedGround(GateSite site, PickedGate build) {
        GateWork work = new GateWork(site, build);
        GatePlan first = Gates.laid(work.ask(Length.ZERO));
        if (first.slide().isPresent()) return work.sliding(first);
        List<HungGate> gates = hungGates(site, build, first);
        double drop = 0;
        for (int i = 0; i < gates.size(); i++)
            drop = Math.max(
                    drop,
                    dropIn(Sags.judged(
                            gates.get(i),
                            work.loads(first, first.hangs().get(i)),
                            site.standards().life())));
        return work.plain(Gates.laid(work.ask(Length.inches(drop))));
    }

    private static double dropIn(GateSag sag) {
        return sag.total().inches() + sag.byTime().afterHanging().total().inches();
    }

    private GateDesign design() {
        GatePlan first = Gates.laid(ask(Length.ZERO));
        if (first.slide().isPresent()) return sliding(first);
        Hanging hung = hang(first);
        if (hung.leaves().isEmpty()) return plain(Gates.plan(ask(Length.ZERO)));
        double drop = 0;
        for (HungLeaf leaf : hung.leaves()) drop = Math.max(drop, dropIn(leaf.sag()));
        GatePlan plan = Gates.plan(ask(Length.inches(drop)));
        return hungDesign(plan, hung).withRemedies("sag.latch", () -> SagRemedies.of(site, build, plan));
    }

    /** A slide leaf on its rollers, planned again with what it drops. */
    private GateDesign sliding(GatePlan first) {
        Optional<SlideDesign> slide = SlideWork.of(site, build, first.slide().orElseThrow());
        if (slide.isEmpty()) return plain(Gates.plan(ask(Length.ZERO))).with(SlideChecks.noPlace(site));
        return slideDesign(Gates.plan(ask(SlideChecks.drop(slide.get()))), slide.get());
    }

    /** On a plan that stands already. */
    private GateDesign slidingOn(GatePlan plan, Optional<SlideDesign> carried) {
        return carried.map(slide -> slideDesign(plan, slide))
                .orElseGet(() -> plain(plan).with(SlideChecks.noPlace(site)));
    }

    private GateDesign slideDesign(GatePlan plan, SlideDesign slide) {
        List<Finding> findings = new ArrayList<>(plan.findings());
        findings.addAll(new SlideChecks(site, slide).findings());
        findings.addAll(LeafFillFindings.of(gate.id(), site, site.leafStyle()));
        LeafBlows blows = LeafBlows.sliding(site, slide.gate().plan().leaf());
        if (!searching)
            findings.addAll(fill(
                    slide.gate().plan().leaf(),
                    parts(),
                    blows.shut().pressure(),
                    blows.open().pressure()));
        return new GateDesign(
                gate,
                build,
                parts(),
                plan,
                List.of(),
                Optional.empty(),
                Optional.of(slide),
                firstPost(plan).id(),
                secondPost(plan).id(),
                Optional.empty(),
                List.of(),
                Findings.join(findings));
    }

    private boolean hangs() {
        return gate.kind().match(swing -> true, pair -> true, slide -> false, flagged -> false);
    }

    /** Whether a hole, where there is one, goes below the loose top of the soil. */
    private boolean reachesSoundSoil(GatePlan plan) {
        return plan.hangs().stream()
                .map(hang -> hingePost(plan, hang))
                .allMatch(post -> !digs(post)
                        || GateFoot.reachesSoundSoil(
                                build.hole(),
                                site.job()
                                        .soilAt(post.run(), post.station().inches())
                                        .deadTop()));
    }

    private static boolean digs(Post post) {
        return post.support()
                .match(footing -> true, driven -> false, plate -> false, socket -> false, wall -> false, old -> false);
    }

    /** How a gate hangs, and what is to be said of the place where two leaves meet. */
    private record Hanging(List<HungLeaf> leaves, Optional<PairDesign> pair, List<Finding> meeting) {}

    private GateDesign hungDesign(GatePlan plan, Hanging hanging) {
        List<HungLeaf> hung = hanging.leaves();
        List<Finding> findings = new ArrayList<>(plan.findings());
        for (int i = 0; i < hung.size(); i++) {
            HungLeaf leaf = hung.get(i);
            findings.addAll(SagFindings.of(leaf, display));
            findings.addAll(GateStrength.findings(leaf.id(), leaf.gate(), leaf.cases(), site.basis()));
            findings.addAll(searching ? SwayFindings.brackets(leaf, display) : SwayFindings.of(leaf, display));
            findings.addAll(LeafFillFindings.of(
                    leaf.id(), site, site.leafStyle(site.fill(leaf.gate().leaf()))));
            GateParts parts = partsOf(leaf.gate().leaf());
            findings.addAll(NailerFindings.of(leaf.gate().leaf(), parts.frame(), parts.cladding()));
            if (!searching) {
                HungLoads loads = loads(plan, plan.hangs().get(i));
                findings.addAll(fill(
                        leaf.gate().leaf(),
                        parts,
                        loads.shut().pressure(),
                        loads.open().pressure()));
            }
            String part = hung.size() == 1 ? gate.id() : leaf.id();
            findings.addAll(
                    HingeChecks.findings(part, leaf.hinges(), leaf.gate().hinge()));
        }
        findings.addAll(hanging.meeting());
        findings.addAll(play(hung, hanging.pair()));
        return new GateDesign(
                gate,
                build,
                parts(),
                plan,
                hung,
                hanging.pair(),
                Optional.empty(),
                firstPost(plan).id(),
                secondPost(plan).id(),
                Optional.empty(),
                List.of(),
                Findings.join(findings));
    }

    /** No part of a build that is searched for: what helps is a rail more. */
    private List<Finding> fill(Leaf leaf, GateParts parts, Pressure shut, Pressure open) {
        Pressure most = open.psf() > shut.psf() ? open : shut;
        return LeafFillWind.of(gate, leaf, parts.cladding(), most, site.basis(), display);
    }

    private List<Finding> play(List<HungLeaf> hung, Optional<PairDesign> pair) {
        return pair.map(two -> List.of(
                        LatchPlay.ofPair(gate.id(), site.latch(), two.rod().rod(), hung, display),
                        LatchPlay.reach(gate.id(), site.latch(), hung, display)))
                .orElseGet(() -> List.of(LatchPlay.ofLatch(gate.id(), site.latch(), hung.get(0), display)));
    }

    private GateDesign plain(GatePlan plan) {
        List<Finding> findings = new ArrayList<>(plan.findings());
        if (!plan.leaves().isEmpty())
            findings.add(Checked.note(
                    "sag.not-worked-out",
                    Severity.CANNOT_SAY,
                    gate.id(),
                    gate.id()
                            + ": its drop and forces are not worked out, since "
                            + (reachesSoundSoil(plan)
                                    ? "its kind or its soil has no numbers here."
                                    : "its footing does not reach below the loose top of the soil. Dig deeper."),
                    Basis.judgement("not worked out here")));
        return new GateDesign(
                gate,
                build,
                parts(),
                plan,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                firstPost(plan).id(),
                secondPost(plan).id(),
                Optional.empty(),
                List.of(),
                Findings.join(findings));
    }

    private GateParts parts() {
        return new GateParts(
                build.frame(),
                build.bracing(),
                build.joint(),
                build.bracket(),
                build.hingePost(),
                build.latchPost(),
                site.hinge(),
                site.latch(),
                site.cladding(),
                site.catalogue().bolts(),
                site.rightLeaf(build));
    }

    /** Those of one leaf: the right one of a pair may have its own. */
    private GateParts partsOf(Leaf leaf) {
        return site.isRight(leaf.hand()) ? parts().turned() : parts();
    }

    private GateAsk ask(Length drop) {
        Length posts = build.hingePost().depth().compareTo(build.latchPost().depth()) > 0
                ? build.hingePost().depth()
                : build.latchPost().depth();
        return new GateAsk(
                gate,
                Opening.of(gate, site.run(), site.line().line(), posts),
                parts(),
                site.ground(),
                site.job().rules().gap(),
                drop,
                site.catalogue().hinges(),
                site.catalogue().rollers(),
                SlideFrames.of(site.catalogue()),
                site.rodToHang().weight(),
                display);
    }

    /** The post of the only leaf, or of a pair's leaf a. */
    private Post firstPost(GatePlan plan) {
        if (plan.slide().isPresent())
            return plan.opening().hingeAtStart(plan.slide().get().kind().opensTo()) ? site.first() : site.second();
        return plan.hangs().isEmpty()
                ? site.first()
                : hingePost(plan, plan.hangs().get(0));
    }

    private Post secondPost(GatePlan plan) {
        return firstPost(plan).equals(site.first()) ? site.second() : site.first();
    }

    private static boolean hingeAtStart(GatePlan plan, LeafHang hang) {
        return plan.opening().hingeAtStart(hang.leaf().hand().hinge());
    }

    private Post hingePost(GatePlan plan, LeafHang hang) {
        return hingePost(site, plan, hang);
    }

    static Post hingePost(GateSite site, GatePlan plan, LeafHang hang) {
        return hingeAtStart(plan, hang) ? site.first() : site.second();
    }

    /** Every leaf of a plan, hung; none where it does not hang, or what holds one of its posts has no numbers. */
    static List<HungGate> hungGates(GateSite site, PickedGate build, GatePlan plan) {
        GateWork work = new GateWork(site, build);
        List<HungGate> gates = new ArrayList<>();
        for (LeafHang hang : plan.hangs()) work.hungGate(plan, hang).ifPresent(gates::add);
        return gates.size() < plan.hangs().size() ? List.of() : gates;
    }

    static HungLoads loads(GateSite site, PickedGate build, GatePlan plan, int leaf) {
        return new GateWork(site, build).loads(plan, plan.hangs().get(leaf));
    }

    /** Every leaf of a plan made ready to be put on any post. */
    static List<LeafDrops> drops(GateSite site, PickedGate build, GatePlan plan) {
        return hungGates(site, build, plan).stream()
                .map(hung -> LeafDrops.of(
                        hung, site.gate().loads().person(), site.standards().life()))
                .toList();
    }

    private Post otherPost(GatePlan plan, LeafHang hang) {
        return hingeAtStart(plan, hang) ? site.second() : site.first();
    }

    /** Its leaves, hung; none where it does not hang, or what holds one of its posts has no numbers. */
    private Hanging hang(GatePlan plan) {
        List<HungGate> gates = new ArrayList<>();
        List<HungLoads> loads = new ArrayList<>();
        for (LeafHang hang : plan.hangs()) {
            hungGate(plan, hang).ifPresent(gates::add);
            loads.add(loads(plan, hang));
        }
        if (gates.isEmpty() || gates.size() < plan.hangs().size())
            return new Hanging(List.of(), Optional.empty(), List.of());
        if (gates.size() == 1)
            return new Hanging(
                    List.of(hung(plan, 0, gates.get(0), loads.get(0), GateForces.of(gates.get(0), loads.get(0)))),
                    Optional.empty(),
                    List.of());
        GateKind.Pair pair = gate.kind().match(swing -> noPair(), is -> is, slide -> noPair(), flagged -> noPair());
        PairWork work = new PairWork(
                site, pair, plan.meeting().orElseThrow(), gates.get(0), loads.get(0), gates.get(1), loads.get(1));
        PairWork.Tried held = work.asked();
        List<HungLeaf> leaves = List.of(
                hung(plan, 0, gates.get(0), loads.get(0), work.forces().leafA(held.forces())),
                hung(plan, 1, gates.get(1), loads.get(1), work.forces().leafB(held.forces())));
        PairDesign design = work.design(
                held,
                leaves.get(0).sag().afterHangingSoft(),
                leaves.get(1).sag().afterHangingSoft());
        return new Hanging(leaves, Optional.of(design), MeetingFindings.of(site, work, design));
    }

    /** The closed cases of both leaves of a pair, leaf a first. */
    static List<List<CaseForces>> closedPair(
            GateSite site, GatePlan plan, List<HungGate> gates, List<HungLoads> loads) {
        GateKind.Pair pair =
                site.gate().kind().match(swing -> noPair(), is -> is, slide -> noPair(), flagged -> noPair());
        PairWork work = new PairWork(
                site, pair, plan.meeting().orElseThrow(), gates.get(0), loads.get(0), gates.get(1), loads.get(1));
        return work.forces().closed(work.asked().forces());
    }

    private static GateKind.Pair noPair() {
        throw new IllegalStateException("Only a pair has two leaves");
    }

    private HungLeaf hung(GatePlan plan, int at, HungGate hung, HungLoads loads, List<CaseForces> cases) {
        LeafHang hang = plan.hangs().get(at);
        boolean single = plan.hangs().size() == 1;
        HungLeaf leaf = new HungLeaf(
                hung,
                searching
                        ? Sags.judged(hung, loads, site.standards().life())
                        : Sags.of(hung, loads, site.standards().life()),
                SagLimits.of(site.latch(), hung.leaf().width()),
                cases,
                HingeChecks.uses(hung.leaf(), cases, hung.hinge()),
                hingePost(plan, hang).id(),
                single ? Optional.of(otherPost(plan, hang).id()) : Optional.empty(),
                List.of());
        return searching ? leaf : leaf.with(workings(plan, hang, leaf, loads));
    }

    private List<Working> workings(GatePlan plan, LeafHang hang, HungLeaf leaf, HungLoads loads) {
        List<Working> workings = new ArrayList<>();
        workings.add(LeafWorkings.wind(
                site.job().site().wind(),
                LeafBlows.on(site, plan, hang).top(),
                site.standards().wind(),
                leaf.gate(),
                loads,
                leaf.cases()));
        HoleSize hole = GateFoot.holeOf(
                site, build.hole(), hang.leaf().hand().hinge(), plan.hangs().size() == 1);
        Function<Function<SoilBand, SoilStiffness>, List<WorkedLine>> soil =
                of -> GateFoot.lines(site, hingePost(plan, hang), leaf.gate().hingePost(), hole, of);
        PostWorkings.governing(leaf.gate(), leaf.cases(), loads).ifPresent(workings::add);
        workings.add(LeafWorkings.drop(
                leaf, soil.apply(SoilBand::likely), site.standards().life()));
        GateSag sag = leaf.sag();
        workings.add(
                DropWorking.of(sag.leafShares(), "leaf", sag.byCause().leaf().inches(), "the free latch corner"));
        if (!loads.ice().isNone()) workings.add(LeafWorkings.ice(leaf, loads.ice()));
        if (!leaf.gate().isOnWall() && leaf.amplification() < 1e6)
            workings.add(LeafWorkings.lean(leaf, soil.apply(SoilBand::soft)));
        if (leaf.sag().sway().hertz() > 0) workings.add(LeafWorkings.frequency(leaf.sag()));
        return workings;
    }

    private Optional<HungGate> hungGate(GatePlan plan, LeafHang hang) {
        if (!hangs()) return Optional.empty();
        Post post = hingePost(plan, hang);
        boolean single = plan.hangs().size() == 1;
        PostStock stock = build.postOf(hang.leaf().hand().hinge(), single);
        return GateFoot.of(
                        site,
                        post,
                        stock,
                        GateFoot.holeOf(site, build.hole(), hang.leaf().hand().hinge(), single))
                .map(foot -> hungGate(plan, hang, stock, foot));
    }

    private HungGate hungGate(GatePlan plan, LeafHang hang, PostStock stock, PierSprings foot) {
        Post post = hingePost(plan, hang);
        boolean single = plan.hangs().size() == 1;
        return new HungGate(
                hang.leaf(),
                partsOf(hang.leaf()).hinge(),
                stock,
                stock.depth().times(0.5),
                Length.inches(
                        Math.max(1, post.top().inches() - hang.pinElevation().inches())),
                otherPost(plan, hang).grade().minus(hang.pinElevation()),
                foot,
                hang.swing().opens(),
                gate.kind()
                        .match(
                                swing -> swing.holdOpen(),
                                pair -> pair.holdOpen(),
                                slide -> fault(),
                                flagged -> fault()),
                single ? ShutAt.LATCH : ShutAt.FOOT);
    }

    private static HoldOpen fault() {
        throw new IllegalStateException("Only a gate that swings hangs");
    }

    private HungLoads loads(GatePlan plan, LeafHang hang) {
        LeafBlows blows = LeafBlows.on(site, plan, hang);
        boolean atStart = hingeAtStart(plan, hang);
        return new HungLoads(
                gate.loads().person(),
                blows.shut(),
                blows.open(),
                blows.shutIn(gate.loads().serviceGust()),
                pushes(atStart ? 0 : 1),
                pushes(atStart ? 1 : 0),
                IceCoat.on(hang.leaf(), gate.loads().ice()),
                blows.onIce(),
                blows.fenceOnIce());
    }

    /** What the half bay of fence beside a gate post pushes it with. */
    private List<PostPush> pushes(int postIndex) {
        List<PostPush> pushes = new ArrayList<>();
        for (Bay bay : site.beside().get(postIndex)) {
            Optional<TributaryWind> wind = site.windBeside(postIndex == 0 ? site.first() : site.second(), bay);
            wind.ifPresent(share -> pushes.add(new PostPush(share.height(), share.force())));
        }
        return pushes;
    }

    /** What comes after hanging in soft soil, of the leaf that drops most, where a build hangs at all. */
    private Optional<Offset> afterHangingSoft(GatePlan plan) {
        List<Offset> drops = new ArrayList<>();
        for (LeafHang hang : plan.hangs())
            hungGate(plan, hang).map(this::afterHangingSoft).ifPresent(drops::add);
        return drops.size() < plan.hangs().size()
                ? Optional.empty()
                : drops.stream().reduce((one, other) -> other.compareTo(one) > 0 ? other : one);
    }

    private Offset afterHangingSoft(HungGate hung) {
        return Sags.afterHanging(
                        hung,
                        hung.foot().soft(),
                        HungLoads.person(gate.loads().person()),
                        site.standards().life())
                .total();
    }

    static Optional<Offset> afterHangingSoft(GateSite site, PickedGate build, GatePlan plan) {
        return new GateWork(site, build).afterHangingSoft(plan);
    }

    /** The finding of a build whose latch corner drops more after hanging in soft soil than its latch takes; empty where it does not. */
    static Optional<Finding> dropsTooFar(GateSite site, Offset drop) {
        Length limit = site.latch().tolerance();
        return Optional.of(drop)
                .filter(after -> after.inches() > limit.inches())
                .map(after -> Checked.of(
                        "sag.latch",
                        Severity.MUST_FIX,
                        site.gate().id(),
                        "drops " + site.job().display().length(after) + " after hanging in soft soil",
                        Basis.judgement("creep, wear, season and a person's residual"),
                        Measure.demand(after.inches(), limit.inches(), "in")));
    }

    /** The least depth, in the footing's steps, at which what comes after hanging stays within the latch in soft soil. */
    static Length depthForDrop(GateSite site, PickedGate build) {
        FootingRules rules = site.standards().footing();
        GateWork work = new GateWork(site, build);
        GatePlan plan = Gates.laid(work.ask(Length.ZERO));
        if (plan.hangs().stream().noneMatch(hang -> digs(work.hingePost(plan, hang)))) return Length.ZERO;
        return DepthForDrop.least(
                depth -> new GateWork(site, build.withDepth(depth))
                        .afterHangingSoft(plan)
                        .orElse(Offset.ZERO),
                site.latch().tolerance().asOffset(),
                rules.least(),
                rules.step(),
                DEEPEST);
    }
}
