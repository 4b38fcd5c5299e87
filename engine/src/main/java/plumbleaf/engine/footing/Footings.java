package plumbleaf.engine.footing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Frost;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Ties;

/**
 * Chooses the depth of a footing: the largest of frost, lateral load, allowed drop and the job's minimum, up to the next step.
 *
 * <p>On the engineered basis every combination binds. On the customary one only what hangs there every day does: a person and wind on code soil are
 * reported as cautions beside the gust at which the footing reaches its limits.
 */
public final class Footings {
    private static final String CODE = "IBC 2021 1807.3.2";

    /** The least of a footing in soil that holds it, below a loose top. Judgement. */
    private static final Length LEAST_IN_SOUND_SOIL = Length.feet(1);

    private Footings() {}

    /**
     * @param diameter of the hole
     * @param pinned a depth the job fixes; it is kept, and the needs above it become findings
     */
    public static FootingDesign size(
            FootingDemand demand,
            Length diameter,
            Stated<Length> pinned,
            Soil soil,
            Frost frost,
            SoilTables tables,
            FootingRules rules,
            DesignBasis basis) {
        List<DepthNeed> binding = new ArrayList<>();
        binding.add(DepthNeed.of(DepthCause.MINIMUM, least(soil, rules)));
        binding.add(DepthNeed.of(
                DepthCause.FROST,
                frost.depth().isZero() ? Length.ZERO : frost.depth().plus(rules.frostMargin())));
        binding.add(DepthNeed.of(DepthCause.DROP, demand.forDrop()));
        boolean presumed = isGroundKnown(soil, tables);
        DepthNeed every = lateral(demand, demand.actions(), diameter, soil, tables, presumed);
        DepthNeed daily = lateral(demand, ofEveryDay(demand.actions()), diameter, soil, tables, presumed);
        if (presumed) binding.add(basis == DesignBasis.ENGINEERED ? every : daily);

        DepthNeed governing = binding.get(0);
        for (DepthNeed need : binding) {
            if (need.depth().compareTo(governing.depth()) > 0) governing = need;
        }
        Length depth = pinned.or(rules.rounded(governing.depth()));
        List<DepthNeed> needs = new ArrayList<>(binding);
        if (presumed && basis != DesignBasis.ENGINEERED) needs.add(every.notBinding());
        List<Finding> all =
                new ArrayList<>(findings(demand, depth, binding, every, presumed, basis, frost, soil.deadTop()));
        RockSocket.finding(
                        demand.part(),
                        depth,
                        soil.numbers().rockAt(),
                        diameter,
                        basis == DesignBasis.ENGINEERED ? demand.actions() : ofEveryDay(demand.actions()),
                        tables)
                .ifPresent(all::add);
        return new FootingDesign(
                demand.part(),
                new HoleSize(diameter, depth),
                governing.depth(),
                pinned.isSaid() ? DepthCause.GIVEN : governing.cause(),
                needs,
                all);
    }

    /**
     * Whether anything may be presumed of how the ground holds a post from the side. Unprepared fill, peat and mud hold what nobody knows; fill that a soils report gives a number for is
     * prepared. Source: IBC 2021 1806.2.
     */
    public static boolean isGroundKnown(Soil soil, SoilTables tables) {
        boolean reported = soil.numbers().lateralPerFoot().isSaid();
        return (soil.kind() != SoilKind.FILL || reported)
                && LateralSoil.of(soil, tables, false).perFoot().psf() > 0;
    }

    private static Length least(Soil soil, FootingRules rules) {
        Length throughLoose = soil.deadTop().plus(LEAST_IN_SOUND_SOIL);
        return throughLoose.compareTo(rules.least()) > 0 ? throughLoose : rules.least();
    }

    private static List<CombinedAction> ofEveryDay(List<CombinedAction> actions) {
        return actions.stream()
                .filter(one -> one.combination() == Combination.D)
                .toList();
    }

    /** The depth that the worst of these combinations asks for by the code's formulas. */
    private static DepthNeed lateral(
            FootingDemand demand,
            List<CombinedAction> actions,
            Length diameter,
            Soil soil,
            SoilTables tables,
            boolean presumed) {
        DepthNeed most = DepthNeed.of(DepthCause.LATERAL, Length.ZERO);
        if (!presumed) return most;
        for (CombinedAction one : actions) {
            // What pulls for good, as stretched fabric does, goes on moving the post: only short loads may count on the
            // doubled value.
            boolean doubled = demand.halfInchDoesNoHarm() && one.combination().isShortTerm();
            LateralSoil lateral = LateralSoil.of(soil, tables, doubled);
            LateralWork work = new LateralWork(one, lateral, doubled, diameter, demand.slabAtGrade());
            if (Ties.isMore(work.depth().inches(), most.depth().inches()))
                most = new DepthNeed(DepthCause.LATERAL, work.depth(), true, Optional.of(work));
        }
        return most;
    }

    private static List<Finding> findings(
            FootingDemand demand,
            Length depth,
            List<DepthNeed> binding,
            DepthNeed every,
            boolean presumed,
            DesignBasis basis,
            Frost frost,
            Length looseTop) {
        List<Finding> findings = new ArrayList<>();
        if (!looseTop.isZero() && depth.compareTo(looseTop) <= 0)
            findings.add(Checked.note(
                    "footing.loose-top",
                    Severity.MUST_FIX,
                    demand.part(),
                    "Footing " + demand.part() + ": " + text(depth) + " deep, all of it in the loose top of "
                            + text(looseTop) + ", which holds nothing. Dig deeper.",
                    Basis.judgement("a loose top counts for nothing")));
        Severity failed = basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION;
        for (DepthNeed need : binding) {
            switch (need.cause()) {
                case FROST -> {
                    if (!need.depth().isZero())
                        findings.add(depthFinding(
                                "footing.frost",
                                failed,
                                demand.part(),
                                depth,
                                need.depth(),
                                "the frost line with its margin",
                                Basis.clause("IBC 2021 1809.5; frost depth by " + frost.source()
                                        + "; local code governs, many exempt fences")));
                }
                case DROP -> {
                    if (!need.depth().isZero())
                        findings.add(depthFinding(
                                "footing.drop",
                                Severity.MUST_FIX,
                                demand.part(),
                                depth,
                                need.depth(),
                                "the gate's allowed drop in soft soil",
                                Basis.judgement("rigid pier in elastic soil, soft value")));
                }
                case MINIMUM ->
                    findings.add(depthFinding(
                            "footing.minimum",
                            Severity.CAUTION,
                            demand.part(),
                            depth,
                            need.depth(),
                            "the least depth",
                            Basis.commonPractice("least depth")));
                case LATERAL, HEAVE, GIVEN -> {
                    if (!need.depth().isZero())
                        findings.add(depthFinding(
                                "footing.depth",
                                Severity.MUST_FIX,
                                demand.part(),
                                depth,
                                need.depth(),
                                basis == DesignBasis.ENGINEERED
                                        ? "lateral load, wind and person included"
                                        : "what hangs on it every day",
                                Basis.clause(CODE)));
                }
            }
        }
        if (!presumed)
            findings.add(Checked.note(
                    "footing.soil",
                    Severity.CANNOT_SAY,
                    demand.part(),
                    "Nothing is presumed for this ground (fill, peat, mud, or as steep as it can stand): have it judged by someone who may. Its depth is the least for frost and custom, and no gust is told.",
                    Basis.clause("IBC 2021 1806.2")));
        else if (basis != DesignBasis.ENGINEERED && !every.depth().isZero())
            findings.add(depthFinding(
                    "footing.code",
                    Severity.CAUTION,
                    demand.part(),
                    depth,
                    every.depth(),
                    "code loads on code soil, not binding on the customary basis; see the rated gust",
                    Basis.clause(CODE)));
        return findings;
    }

    private static Finding depthFinding(
            String id, Severity failed, String part, Length provided, Length needed, String why, Basis basis) {
        String message =
                "Footing " + part + ": " + text(provided) + " deep, " + text(needed) + " needed for " + why + ".";
        return Checked.of(id, failed, part, message, basis, Measure.provided(provided.inches(), needed.inches(), "in"));
    }

    private static String text(Length length) {
        return LengthText.feetAndInches(length.inches());
    }
}
