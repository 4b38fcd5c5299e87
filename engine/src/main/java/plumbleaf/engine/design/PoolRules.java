package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.job.Climbable;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.PoolBarrier;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunEnd;
import plumbleaf.engine.job.RunStretch;
import plumbleaf.engine.line.BarrierSide;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BayFill;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.RailPiece;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.rule.BarrierWord;
import plumbleaf.engine.rule.PoolFence;
import plumbleaf.engine.rule.RuleTable;

/** A pool's barrier as drawn, measured bay by bay against each clause; of the bays of a run the worst is told. Check: PoolMeasuredCheck. */
final class PoolRules {
    /** Ends nearer than this meet: a 4 in. sphere does not pass. */
    private static final Length MEETS = Length.inches(3.9);

    private final Job job;
    private final Ground ground;
    private final Layout layout;
    private final RuleTable rules;
    private final PoolBarrier pool;

    private PoolRules(Job job, Ground ground, Layout layout, RuleTable rules, PoolBarrier pool) {
        this.job = job;
        this.ground = ground;
        this.layout = layout;
        this.rules = rules;
        this.pool = pool;
    }

    static List<Finding> of(Job job, Ground ground, Layout layout, List<GateDesign> gates, RuleTable rules) {
        PoolBarrier pool = job.rules().pool();
        PoolRules barrier = new PoolRules(job, ground, layout, rules, pool);
        List<Finding> findings = new ArrayList<>();
        for (Run run : job.runs()) if (pool.has(run)) findings.addAll(barrier.run(run));
        for (GateDesign gate : gates) {
            if (!pool.has(gate.asked())) continue;
            Run run = job.run(gate.asked().run());
            findings.addAll(new PoolGateRules(pool, ground, layout.run(run.id()), gate, rules).findings());
        }
        findings.addAll(barrier.outside());
        return findings;
    }

    private List<Finding> run(Run run) {
        RunLayout laid = layout.run(run.id());
        List<Finding> bays = new ArrayList<>();
        for (Bay bay : laid.bays()) bays.addAll(bay(run, laid, bay));
        List<Finding> findings = new ArrayList<>(worstOfEach(bays));
        PlanLine line = laid.line().line();
        if (isOpen(run.first(), run, line.vertex(0), true)) findings.add(BarrierWord.open(run.id(), "start", rules));
        if (isOpen(run.last(), run, line.vertex(line.legs()), false))
            findings.add(BarrierWord.open(run.id(), "end", rules));
        return findings;
    }

    /** A free end that no other run of the barrier meets; a run that comes back to its own start meets itself. */
    private boolean isOpen(RunEnd end, Run run, PlanPoint at, boolean start) {
        if (!end.match(free -> true, wall -> false, joins -> false, theirs -> true)) return false;
        for (Run other : job.runs()) {
            PlanLine line = layout.run(other.id()).line().line();
            boolean own = other.id().equals(run.id());
            if (!(own && start) && line.vertex(0).distanceTo(at).compareTo(MEETS) <= 0) return false;
            if (!(own && !start) && line.vertex(line.legs()).distanceTo(at).compareTo(MEETS) <= 0) return false;
        }
        return true;
    }

    private List<Finding> bay(Run run, RunLayout laid, Bay bay) {
        List<Finding> findings = new ArrayList<>();
        BarrierSide.Least height = BarrierSide.of(
                ground, laid.line(), !pool.poolInside(), bay.start(), bay.end(), bay.topFrom(), bay.topTo());
        if (!height.known()) findings.add(BarrierWord.sideUnknown(run.id(), atLeastZero(height.least()), rules));
        Fill fill = fill(bay);
        fill.mesh().ifPresent(mesh -> findings.add(BarrierWord.mesh(bay.id(), mesh, rules)));
        boolean railsAway =
                pool.poolInside() ? run.finishedFace() == FinishedFace.OUT : run.finishedFace() == FinishedFace.IN;
        PoolFence fence = new PoolFence(
                bay.id(),
                atLeastZero(height.least()),
                atLeastZero(bay.groundGapMax()),
                isHard(run.id(), bay.start().inches(), bay.end().inches()),
                fill.gap(),
                bay.fill().dries(),
                fill.railTops(),
                fill.railsHidden() || (railsAway && fill.railsOnOneFace()));
        findings.addAll(fence.findings(rules, pool.height()));
        return findings;
    }

    /**
     * What of a bay's filling the clauses look at.
     *
     * @param gap its widest opening, when driest
     * @param railTops least between tops of neighbouring rails, which are alike, so between their middles
     * @param railsOnOneFace whether the rails are on one face alone
     * @param railsHidden whether no rail is there to climb
     */
    private record Fill(
            Length gap, Length railTops, boolean railsOnOneFace, boolean railsHidden, Optional<Length> mesh) {}

    private static Fill fill(Bay bay) {
        Length whole = atLeastZero(bay.topFrom().minus(bay.bottomFrom()));
        Length tops = railTops(bay.rails(), whole);
        Length widest = bay.fill().widestOpening();
        return bay.fill()
                .match(
                        open -> new Fill(whole, tops, false, false, Optional.empty()),
                        pickets -> new Fill(widest, tops, true, false, Optional.empty()),
                        lying -> lying(lying, whole),
                        panel -> new Fill(widest, tops, false, false, Optional.empty()),
                        fabric -> new Fill(widest, whole, false, true, Optional.of(widest)),
                        wire -> new Fill(widest, tops, false, false, Optional.of(widest)));
    }

    /** Boards that lie are themselves the rails of a ladder, on both faces, as soon as a gap opens between them. */
    private static Fill lying(BayFill.Lying lying, Length whole) {
        Length gap = lying.widestOpening();
        Length pitch = railTops(lying.boards(), whole);
        return new Fill(gap, gap.isZero() ? whole : pitch, false, gap.isZero(), Optional.empty());
    }

    private static Length railTops(List<RailPiece> rails, Length whole) {
        TreeSet<Double> heights = new TreeSet<>();
        for (RailPiece rail : rails) heights.add(rail.from().inches());
        double least = whole.inches();
        Double before = null;
        for (Double height : heights) {
            if (before != null) least = Math.min(least, height - before);
            before = height;
        }
        return Length.inches(Math.max(0, least));
    }

    private boolean isHard(String run, double fromIn, double toIn) {
        for (RunStretch stretch : pool.hard()) {
            if (stretch.run().equals(run) && stretch.covers(fromIn, toIn)) return true;
        }
        return false;
    }

    private List<Finding> outside() {
        List<Finding> findings = new ArrayList<>();
        for (Climbable thing : pool.climbables())
            findings.add(BarrierWord.climbable(thing.run(), thing.what(), thing.away(), rules));
        if (!pool.lookedOutside()) findings.add(BarrierWord.notLookedOutside(rules));
        else if (pool.climbables().isEmpty()) findings.add(BarrierWord.nothingOutside(rules));
        return findings;
    }

    /** Of findings of one id the worst. */
    static List<Finding> worstOfEach(List<Finding> all) {
        List<Finding> worst = new ArrayList<>();
        TreeSet<String> told = new TreeSet<>();
        for (Finding finding : Findings.join(all)) if (told.add(finding.id())) worst.add(finding);
        return worst;
    }

    static Length atLeastZero(Offset offset) {
        return Length.inches(Math.max(0, offset.inches()));
    }
}
