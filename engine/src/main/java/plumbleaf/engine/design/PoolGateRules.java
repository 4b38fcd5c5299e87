package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.PoolBarrier;
import plumbleaf.engine.job.PoolGateSaid;
import plumbleaf.engine.job.RunStretch;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.line.BarrierSide;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.rule.BarrierWord;
import plumbleaf.engine.rule.PoolFence;
import plumbleaf.engine.rule.PoolGate;
import plumbleaf.engine.rule.RuleTable;

/** A gate in a pool's barrier, its leaves measured as drawn. Check: PoolMeasuredCheck. */
final class PoolGateRules {
    /** So near to a low release no opening may be. Source: ISPSC 305.3 (PB15). */
    private static final double NEAR_RELEASE_IN = 18;

    private final PoolBarrier pool;
    private final Ground ground;
    private final RunLayout run;
    private final GateDesign design;
    private final Gate gate;
    private final RuleTable rules;

    PoolGateRules(PoolBarrier pool, Ground ground, RunLayout run, GateDesign design, RuleTable rules) {
        this.pool = pool;
        this.ground = ground;
        this.run = run;
        this.design = design;
        this.gate = design.asked();
        this.rules = rules;
    }

    List<Finding> findings() {
        if (design.plan().hangs().isEmpty())
            return List.of(Checked.note(
                    "barrier.gate",
                    Severity.CANNOT_SAY,
                    gate.id(),
                    "Gate " + gate.id()
                            + " in the pool barrier is of a kind, or a size, that is not worked out here: none of its clauses is checked.",
                    rules.row("PB13").basis()));
        List<Finding> findings = new ArrayList<>();
        PoolGateSaid said = pool.gate(gate.id());
        for (LeafHang hang : design.plan().hangs()) findings.addAll(leaf(hang));
        LeafHang first = design.plan().hangs().get(0);
        Stated<Boolean> closer = said.closer();
        findings.addAll(new PoolGate(
                        gate.id(),
                        swingsAway(),
                        closes() || closer.or(false),
                        design.parts().latch().selfLatching(),
                        Stated.of(said.releaseHeight().or(gate.latch().height())),
                        said.releaseOnPoolSide(),
                        top(first),
                        Stated.of(said.shielded() ? Length.ZERO : nearRelease(first.leaf())),
                        besideBrace(first.leaf()))
                .findings(rules));
        findings.add(BarrierWord.lockable(gate.id(), said.lockable(), rules));
        if (design.plan().hangs().size() > 1)
            findings.add(BarrierWord.inactive(gate.id(), said.inactiveFixed(), rules));
        return PoolRules.worstOfEach(findings);
    }

    private Stated<Boolean> swingsAway() {
        SwingWay away = pool.poolInside() ? SwingWay.OUT : SwingWay.IN;
        return gate.kind()
                .match(
                        swing -> is(swing.swing(), away),
                        (GateKind.Pair pair) -> is(pair.swing(), away),
                        slide -> Stated.open(),
                        flagged -> Stated.open());
    }

    private static Stated<Boolean> is(Stated<SwingWay> said, SwingWay away) {
        return said.match(way -> Stated.of(way.is() == away), unsaid -> Stated.open());
    }

    /** A leaf is a piece of fence too. */
    private List<Finding> leaf(LeafHang hang) {
        List<Finding> findings = new ArrayList<>();
        Leaf leaf = hang.leaf();
        Offset from = design.plan().opening().station().asOffset();
        Offset to = from.plus(design.plan().opening().clear().asOffset());
        List<Place> corners = leaf.outline().corners();
        double atLatch = corners.get(2).z().inches() + hang.pinElevation().inches();
        double atHinge = corners.get(3).z().inches() + hang.pinElevation().inches();
        boolean hingeFirst = design.plan().opening().hingeAtStart(leaf.hand().hinge());
        BarrierSide.Least height = BarrierSide.of(
                ground,
                run.line(),
                !pool.poolInside(),
                from,
                to,
                new Offset(hingeFirst ? atHinge : atLatch),
                new Offset(hingeFirst ? atLatch : atHinge));
        if (!height.known())
            findings.add(BarrierWord.sideUnknown(gate.id(), PoolRules.atLeastZero(height.least()), rules));
        mesh(leaf).ifPresent(opening -> findings.add(BarrierWord.mesh(leaf.id(), opening, rules)));
        PoolFence fence = new PoolFence(
                leaf.id(),
                PoolRules.atLeastZero(height.least()),
                PoolRules.atLeastZero(hang.swing().closedLargest().clear()),
                isHard(from.inches(), to.inches()),
                gap(leaf),
                dries(leaf),
                railTops(leaf),
                frameOnPoolSide(leaf));
        findings.addAll(fence.findings(rules, pool.height()));
        return findings;
    }

    private boolean isHard(double fromIn, double toIn) {
        for (RunStretch stretch : pool.hard()) {
            if (stretch.run().equals(gate.run()) && stretch.covers(fromIn, toIn)) return true;
        }
        return false;
    }

    private Length top(LeafHang hang) {
        double latch = hang.leaf().outline().corners().get(2).z().inches();
        double hinge = hang.leaf().outline().corners().get(3).z().inches();
        return Length.inches(Math.max(0, Math.min(latch, hinge)));
    }

    /** Whether every leaf closes by its own hinges. */
    private boolean closes() {
        return design.plan().hangs().stream()
                .allMatch(hang -> design.partsOf(hang.leaf()).hinge().selfClosing());
    }

    /** Through its filling, at the hinges and at the latch; a mesh has its own clause. */
    private Length gap(Leaf leaf) {
        double beside =
                Math.max(gate.leaf().hingeGap().inches(), gate.leaf().latchGap().inches());
        return Length.inches(Math.max(LeafOpenings.filled(design, leaf), beside));
    }

    private Optional<Length> mesh(Leaf leaf) {
        return design.partsOf(leaf)
                .cladding()
                .match(
                        open -> Optional.empty(),
                        wood -> Optional.empty(),
                        pickets -> Optional.empty(),
                        mesh -> Optional.of(Length.inches(
                                Math.max(0, mesh.pitch().inches() - mesh.wire().inches()))),
                        sheet -> Optional.empty());
    }

    private boolean dries(Leaf leaf) {
        return design.partsOf(leaf)
                .cladding()
                .match(open -> false, wood -> true, pickets -> false, mesh -> false, sheet -> false);
    }

    private static Length railTops(Leaf leaf) {
        List<Member> rails = leaf.rails();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < rails.size(); i++)
            least = Math.min(
                    least,
                    rails.get(i).middle().z().inches()
                            - rails.get(i - 1).middle().z().inches());
        return Length.inches(Math.max(0, Math.min(least, 1000)));
    }

    /** Boards on the side away from the pool leave the frame to the pool. */
    private boolean frameOnPoolSide(Leaf leaf) {
        FinishedFace away = pool.poolInside() ? FinishedFace.OUT : FinishedFace.IN;
        return design.partsOf(leaf)
                .cladding()
                .match(open -> false, wood -> wood.face() == away, pickets -> false, mesh -> false, sheet -> false);
    }

    /** A brace on the side that is climbed makes openings with the rails. */
    private Length besideBrace(Leaf leaf) {
        boolean braced = !leaf.of(MemberRole.BRACE).isEmpty();
        return braced && !frameOnPoolSide(leaf) && LeafOpenings.filled(design, leaf) > 0
                ? Length.inches(LeafOpenings.betweenRails(leaf))
                : Length.ZERO;
    }

    /** The widest opening within 18 in. of the latch: at the latch itself, between pickets of the leaf, and of the fence beside its post. */
    private Length nearRelease(Leaf leaf) {
        double widest = Math.max(gate.leaf().latchGap().inches(), gapNear(leaf));
        boolean hingeFirst = design.plan().opening().hingeAtStart(leaf.hand().hinge());
        for (Bay bay : run.bays()) {
            boolean beside = hingeFirst
                    ? bay.from().equals(design.latchPost())
                    : bay.to().equals(design.latchPost());
            if (beside) widest = Math.max(widest, bay.pickets().gapDriest().inches());
        }
        return Length.inches(Math.max(0, widest));
    }

    private double gapNear(Leaf leaf) {
        double edge = leaf.latchAt().r().inches() - NEAR_RELEASE_IN;
        double widest = leaf.pickets().isEmpty() ? LeafOpenings.filled(design, leaf) : 0;
        if (!leaf.pickets().isEmpty() && leaf.pickets().get(0).lying())
            return Math.max(0, leaf.picketGap().inches());
        for (int i = 1; i < leaf.pickets().size(); i++) {
            double from = leaf.pickets().get(i - 1).r().inches()
                    + leaf.pickets().get(i - 1).width().inches();
            double to = leaf.pickets().get(i).r().inches();
            if (to > edge) widest = Math.max(widest, to - from);
        }
        return widest;
    }
}
