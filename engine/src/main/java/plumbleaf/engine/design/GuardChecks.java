package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.ground.Ground;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Guarded;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.RunSide;
import plumbleaf.engine.job.RunSides;
import plumbleaf.engine.job.RunStretch;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.rule.GuardRules;
import plumbleaf.engine.rule.RuleTable;

/** A fence beside a drop as a guard: how high, what passes through, what its top rail takes, and what its wall must take. Its posts carry the load among their own. */
final class GuardChecks {
    private final Job job;
    private final Ground ground;
    private final Layout layout;
    private final BayWork work;
    private final List<GateDesign> gates;
    private final RuleTable rules;

    GuardChecks(Job job, Ground ground, Layout layout, BayWork work, List<GateDesign> gates, RuleTable rules) {
        this.job = job;
        this.ground = ground;
        this.layout = layout;
        this.work = work;
        this.gates = gates;
        this.rules = rules;
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (Guarded guard : job.rules().guards()) {
            if (GuardLoad.asked(guard)) findings.addAll(of(guard));
            else findings.add(GuardRules.none(guard.at().run(), guard.drop(), rules));
        }
        return findings;
    }

    private List<Finding> of(Guarded guard) {
        Run run = job.run(guard.at().run());
        List<Bay> bays = layout.run(run.id()).bays().stream()
                .filter(bay ->
                        guard.at().touches(bay.start().inches(), bay.end().inches()))
                .toList();
        List<Finding> ofGates = gates(guard);
        if (bays.isEmpty()) return ofGates;
        List<Finding> all = new ArrayList<>();
        for (Bay bay : bays) {
            Length gap = PoolRules.atLeastZero(bay.groundGapMax());
            all.addAll(GuardRules.of(bay.id(), leastHeight(bay), widest(bay, gap), guard.dwelling(), rules));
            OptionalDouble rail = work.pushed(run, bay, GuardLoad.onRailLbPerIn(guard, bay.slopeLength()));
            all.add(rail.isPresent() ? rail(bay, rail.getAsDouble()) : GuardRules.noRail(bay.id(), rules));
        }
        List<Finding> findings = new ArrayList<>(PoolRules.worstOfEach(all));
        findings.addAll(ofGates);
        boolean engineered = bays.stream()
                .allMatch(bay ->
                        job.basisAt(run, (bay.start().inches() + bay.end().inches()) / 2) == DesignBasis.ENGINEERED);
        if (!engineered)
            findings.add(GuardRules.customary(run.id(), rules).withRemedies(List.of(onCodeWind(run, guard.at()))));
        Bay longest = bays.get(0);
        for (Bay bay : bays) if (bay.level().compareTo(longest.level()) > 0) longest = bay;
        double pushLb = GuardLoad.on(guard, longest.level()).pounds();
        double momentLbFt = pushLb * run.infill().plus(run.bottomGap()).inFeet();
        findings.add(GuardRules.wall(run.id(), guard.drop(), pushLb, momentLbFt, rules));
        return findings;
    }

    /** Those that open in it. */
    private List<Finding> gates(Guarded guard) {
        List<Finding> findings = new ArrayList<>();
        for (GateDesign gate : gates) {
            double from = gate.asked().station().inches();
            boolean inIt = gate.asked().run().equals(guard.at().run())
                    && guard.at().touches(from, from + gate.asked().opening().inches());
            if (inIt)
                findings.addAll(
                        new GuardGate(guard, gate, ground.profile(guard.at().run()), rules).findings());
        }
        return findings;
    }

    /** The top over the ground on its own line, at every bend of the ground. */
    private Length leastHeight(Bay bay) {
        double least = Double.POSITIVE_INFINITY;
        double length = bay.end().inches() - bay.start().inches();
        for (ProfilePoint point : ground.profile(bay.run()).between(bay.start(), bay.end())) {
            double share = (point.station().inches() - bay.start().inches()) / length;
            double top = bay.topFrom().inches()
                    + share * (bay.topTo().inches() - bay.topFrom().inches());
            least = Math.min(least, top - point.elevation().inches());
        }
        return Length.inches(Math.max(0, least));
    }

    private static Length widest(Bay bay, Length under) {
        Length through = bay.fill().widestOpening();
        return through.compareTo(under) > 0 ? through : under;
    }

    private static Finding rail(Bay bay, double ratio) {
        return new Checked(
                "guard.rail",
                ratio <= 1 ? Severity.PASS : Severity.MUST_FIX,
                bay.id(),
                "A person against the top rail of " + bay.id() + " takes " + DecimalText.fixed(ratio, 2)
                        + " of its bending strength.",
                Basis.clause("ASCE 7-16 4.5.1; local code governs"),
                Optional.of(Measure.demand(ratio, 1, "")),
                List.of());
    }

    /** The guard with a bay on either side, so that every post of it is meant, wherever posts then stand. */
    private Remedy onCodeWind(Run run, RunStretch guard) {
        double bayIn = run.maxBay().inches();
        double endIn = layout.run(run.id()).line().line().length().inches();
        Length from = Length.inches(Math.max(0, guard.from().inches() - bayIn));
        Length to = Length.inches(Math.min(endIn, guard.to().inches() + bayIn));
        List<RunSide> sides = RunSides.changed(run.sides(), from, to, side -> side.withBasis(DesignBasis.ENGINEERED));
        return Remedy.ofEdit(
                "engineered-there",
                "build it on the engineered basis from station " + job.display().length(from) + " to "
                        + job.display().length(to) + ", the guard and a bay on either side, and the rest as it is",
                "runs[" + run.id() + "].sides=" + RunSides.text(sides));
    }
}
