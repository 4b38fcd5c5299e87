package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceRails;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.strength.BayChecks;
import plumbleaf.engine.strength.GustPart;
import plumbleaf.engine.strength.PicketCheck;
import plumbleaf.engine.strength.Withdrawal;
import plumbleaf.engine.wind.TributaryWind;

/** Checks the rails and the picket screws of every bay, and says the worst of each run. */
final class BayWork {
    /** A #8 deck screw, as the order has them. Source: ASME B18.6.1. */
    private static final Length SCREW = Length.inches(0.164);

    /** Threads in the rail: a 1-5/8 in. screw through a 5/8 in. board. */
    private static final Length LONGEST_SCREW = Length.inches(1.625);

    /** CM of screws in wood that gets wet in service. Source: NDS 2018 Table 11.3.3, from memory. */
    private static final double WET_SCREW = 0.7;

    private static final double WIND_DURATION = 1.6;

    /**
     * What a rail is expected to bend with over its allowable in wind: the nominal strength of load and resistance factor design, {@code KF lambda / CD = 2.54
     * / 1.6}. Source: NDS 2018 Appendix N, Tables N1 and N3, from memory.
     */
    private static final double RAIL_RESERVE = 2.54 / WIND_DURATION;

    private final Job job;
    private final Catalogue catalogue;

    BayWork(Job job, Catalogue catalogue) {
        this.job = job;
        this.catalogue = catalogue;
    }

    List<Finding> of(Run run, List<Bay> bays, RunWind wind) {
        Optional<FenceStyle> style = catalogue.style(run.style());
        Map<String, List<Finding>> alike = new LinkedHashMap<>();
        for (Bay bay : bays) {
            Optional<TributaryWind> here = wind.on(bay.start(), bay.end());
            if (style.flatMap(FenceStyle::boarding).isEmpty() || here.isEmpty()) continue;
            for (Finding finding : checks(run, bay, style.get(), here.get().mean()))
                alike.computeIfAbsent(finding.id(), id -> new ArrayList<>()).add(finding);
        }
        List<Finding> worst = new ArrayList<>();
        for (List<Finding> group : alike.values())
            worst.add(Findings.join(group).get(0));
        return worst;
    }

    /** The rails of every bay in a plain gust of the design speed. */
    List<GustPart> rails(Run run, List<Bay> bays, RunWind wind) {
        Optional<FenceStyle> style = catalogue.style(run.style());
        List<GustPart> parts = new ArrayList<>();
        for (Bay bay : bays) {
            Optional<TributaryWind> gust = wind.gustOn(bay.start(), bay.end());
            if (style.flatMap(FenceStyle::boarding).isEmpty() || gust.isEmpty()) continue;
            BayChecks checks = checksOf(run, bay, style.get());
            double still = checks.railCheck(Pressure.ZERO).windRatio();
            double blown = checks.railCheck(gust.get().mean()).windRatio() - still;
            parts.add(new GustPart("rails of " + bay.id(), still, blown / Combination.D_W.wind(), 1, RAIL_RESERVE));
        }
        return parts;
    }

    private BayChecks checksOf(Run run, Bay bay, FenceStyle style) {
        Boarding boards = style.boarding().orElseThrow();
        return BayChecks.of(
                bay.id(),
                bay.slopeLength(),
                run.infill(),
                style.railsFor(run.infill()),
                edge(style.rails()),
                boards,
                catalogue.species(boards.railSpecies()).orElseThrow(),
                catalogue.species(boards.species()).orElseThrow());
    }

    private static Length edge(FenceRails rails) {
        return rails.match(none -> Length.ZERO, FenceRails.Wood::edge, FenceRails.Steel::edge);
    }

    private List<Finding> checks(Run run, Bay bay, FenceStyle fence, Pressure wind) {
        DesignBasis basis = job.site().forcesEngineered() ? DesignBasis.ENGINEERED : job.basisOf(run);
        Boarding style = fence.boarding().orElseThrow();
        WoodSpecies rails = catalogue.species(style.railSpecies()).orElseThrow();
        BayChecks checks = checksOf(run, bay, fence);
        List<Finding> findings = new ArrayList<>(checks.railCheck(wind).findings(bay.id(), basis));
        Length threads = LONGEST_SCREW.minus(style.boardThickness());
        Force allowed = Withdrawal.allowed(
                Withdrawal.screwPerInch(rails.ovenDryGravity(), SCREW), threads, WIND_DURATION, WET_SCREW);
        Area crossing = Area.squareInches(
                style.boardWidth().inches() * checks.busiestShare().inches());
        findings.add(PicketCheck.of(bay.id(), wind, crossing, style.fastenersPerCrossing(), allowed, basis));
        return findings;
    }
}
