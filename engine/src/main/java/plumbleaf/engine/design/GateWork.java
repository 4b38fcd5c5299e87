package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.DepthForDrop;
import plumbleaf.engine.footing.FootingRules;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.gate.GateAsk;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Gates;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Opening;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateForces;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.PierSprings;
import plumbleaf.engine.sag.PostPush;
import plumbleaf.engine.sag.Sags;
import plumbleaf.engine.wind.LeafWind;
import plumbleaf.engine.wind.Screen;
import plumbleaf.engine.wind.Span;
import plumbleaf.engine.wind.TributaryWind;

/** Designs one gate with one build: plan, sag, forces, footing, findings. */
final class GateWork {
    /** Depths tried when the drop asks for more: no hole of a gate post is dug deeper by an ordinary crew. Judgement. */
    private static final Length DEEPEST = Length.feet(8);

    private final GateSite site;
    private final PickedGate build;
    private final Gate gate;
    private final DisplayUnits display;

    private GateWork(GateSite site, PickedGate build) {
        this.site = site;
        this.build = build;
        this.gate = site.gate();
        this.display = site.job().display();
    }

    static GateDesign design(GateSite site, PickedGate build) {
        return new GateWork(site, build).design();
    }

    private GateDesign design() {
        GatePlan first = Gates.judged(ask(Length.ZERO));
        Optional<SoilBand> band = band();
        if (!hangs(first) || band.isEmpty()) return plain(Gates.plan(ask(Length.ZERO)));
        HungLeaf hung = hang(first, band.get());
        double drop = hung.sag().total().inches()
                + hung.sag().byTime().afterHanging().total().inches();
        GatePlan plan = Gates.plan(ask(Length.inches(Math.max(0, drop))));
        List<Finding> findings = new ArrayList<>(plan.findings());
        Leaf leaf = hung.gate().leaf();
        findings.addAll(SagFindings.of(leaf.id(), hung.sag(), hung.limits(), display));
        findings.addAll(GateStrength.findings(leaf.id(), hung, site.basis()));
        findings.addAll(HingeChecks.findings(gate.id(), hung.hinges(), site.hinge()));
        return new GateDesign(
                gate,
                build,
                parts(),
                plan,
                List.of(hung),
                hingePost(plan).id(),
                latchPost(plan).id(),
                List.of(),
                Findings.join(findings));
    }

    private Optional<SoilBand> band() {
        return SoilBand.of(site.job().site().soil(), site.standards().soil());
    }

    private boolean hangs(GatePlan plan) {
        return gate.kind().match(swing -> true, pair -> false, slide -> false, flagged -> false)
                && !plan.leaves().isEmpty();
    }

    private GateDesign plain(GatePlan plan) {
        List<Finding> findings = new ArrayList<>(plan.findings());
        if (!plan.leaves().isEmpty())
            findings.add(Checked.note(
                    "sag.not-worked-out",
                    Severity.CANNOT_SAY,
                    gate.id(),
                    gate.id()
                            + ": its drop and forces are not worked out, since its kind or its soil has no numbers here.",
                    Basis.judgement("not worked out here")));
        return new GateDesign(
                gate,
                build,
                parts(),
                plan,
                List.of(),
                hingePost(plan).id(),
                latchPost(plan).id(),
                List.of(),
                Findings.join(findings));
    }

    private GateParts parts() {
        return new GateParts(
                build.frame(),
                build.braces(),
                build.joint(),
                build.hingePost(),
                build.latchPost(),
                site.hinge(),
                site.latch(),
                site.cladding());
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
                display);
    }

    private boolean hingeAtStart(GatePlan plan) {
        return plan.leaves().isEmpty()
                || plan.opening().hingeAtStart(plan.leaves().get(0).hand().hinge());
    }

    private Post hingePost(GatePlan plan) {
        return hingeAtStart(plan) ? site.first() : site.second();
    }

    private Post latchPost(GatePlan plan) {
        return hingeAtStart(plan) ? site.second() : site.first();
    }

    private HungLeaf hang(GatePlan plan, SoilBand band) {
        Leaf leaf = plan.leaves().get(0);
        HungGate hung = hung(plan, band);
        HungLoads loads = loads(plan, leaf);
        List<CaseForces> cases = GateForces.of(hung, loads);
        return new HungLeaf(
                hung,
                Sags.of(hung, loads, site.standards().life()),
                SagLimits.of(site.latch(), leaf.width()),
                cases,
                HingeChecks.uses(leaf, cases, site.hinge()));
    }

    private HungGate hung(GatePlan plan, SoilBand band) {
        GateKind.Swing swing = gate.kind().match(is -> is, pair -> fault(), slide -> fault(), flagged -> fault());
        Post post = hingePost(plan);
        return new HungGate(
                plan.leaves().get(0),
                site.hinge(),
                build.hingePost(),
                build.hingePost().depth().times(0.5),
                Length.inches(
                        Math.max(1, post.top().inches() - plan.pinElevation().inches())),
                latchPost(plan).grade().minus(plan.pinElevation()),
                springs(band, build.hole()),
                swing.opens(),
                swing.holdOpen());
    }

    private PierSprings springs(SoilBand band, HoleSize hole) {
        return PierSprings.of(band, hole, site.job().site().soil().looseTop());
    }

    private static GateKind.Swing fault() {
        throw new IllegalStateException("Only a swing gate hangs");
    }

    private HungLoads loads(GatePlan plan, Leaf leaf) {
        int leg = site.wind().legAt(gate.station().asOffset());
        Offset from = gate.station().asOffset();
        Span span = site.wind()
                .onLeg(leg, from, from.plus(gate.opening().asOffset()))
                .orElseThrow();
        LeafWind shut = LeafWind.shut(site.wind().design(leg), span);
        LeafWind gust = LeafWind.shut(site.wind().gust(leg, gate.loads().serviceGust()), span);
        Length surface = gate.leaf().infill();
        Screen screen = LeafScreen.of(leaf, site.style());
        LeafWind open = LeafWind.alone(
                site.job().site().wind(),
                leaf.width(),
                surface,
                surface.plus(gate.leaf().bottomGap()),
                screen,
                site.standards().wind());
        boolean atStart = hingeAtStart(plan);
        return new HungLoads(gate.loads().person(), shut, open, gust, pushes(atStart ? 0 : 1), pushes(atStart ? 1 : 0));
    }

    /** What the half bay of fence beside a gate post pushes it with. */
    private List<PostPush> pushes(int postIndex) {
        List<PostPush> pushes = new ArrayList<>();
        for (Bay bay : site.beside().get(postIndex)) {
            Offset middle = bay.start().plus(bay.level().asOffset().times(0.5));
            Optional<TributaryWind> wind = postIndex == 0
                    ? site.wind().on(middle, bay.end())
                    : site.wind().on(bay.start(), middle);
            wind.ifPresent(share -> pushes.add(new PostPush(share.height(), share.force())));
        }
        return pushes;
    }

    /**
     * The least depth, in the footing's steps, at which what comes after hanging stays within latch and eye in soft soil. The leaf stays as it is; only what it
     * stands in is tried.
     */
    static Length depthForDrop(GateSite site, PickedGate build) {
        FootingRules rules = site.standards().footing();
        GateWork work = new GateWork(site, build);
        GatePlan plan = Gates.judged(work.ask(Length.ZERO));
        Optional<SoilBand> band = work.band();
        if (!work.hangs(plan) || band.isEmpty()) return rules.least();
        HungGate hung = work.hung(plan, band.get());
        HungLoads loads = work.loads(plan, hung.leaf());
        return DepthForDrop.least(
                depth -> {
                    HoleSize hole = new HoleSize(build.hole().diameter(), depth);
                    return Sags.afterHanging(
                                    hung,
                                    work.springs(band.get(), hole).soft(),
                                    loads,
                                    site.standards().life())
                            .total();
                },
                site.latch().tolerance().asOffset(),
                rules.least(),
                rules.step(),
                DEEPEST);
    }
}
