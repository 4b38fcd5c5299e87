package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceRails;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.catalogue.Screw;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.FencePicket;
import plumbleaf.engine.line.LowRails;
import plumbleaf.engine.line.RailPiece;
import plumbleaf.engine.line.RailRows;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.section.Timber;
import plumbleaf.engine.strength.BayChecks;
import plumbleaf.engine.strength.BoardLever;
import plumbleaf.engine.strength.GustPart;
import plumbleaf.engine.strength.HangingBoards;
import plumbleaf.engine.strength.PicketCheck;
import plumbleaf.engine.strength.RailCheck;
import plumbleaf.engine.strength.TubeStrength;
import plumbleaf.engine.strength.Withdrawal;
import plumbleaf.engine.wind.TributaryWind;

/** Checks the rails and the picket screws of every bay, and says the worst of each run. */
final class BayWork {
    /** CM of screws in wood that gets wet in service. Source: NDS 2018 Table 11.3.3, from memory. */
    private static final double WET_SCREW = 0.7;

    private static final double WIND_DURATION = 1.6;

    /** Boards as near as this count as closed. Judgement. */
    private static final double CLOSED_GAP_IN = 0.25;

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
            Optional<TributaryWind> here = wind.on(List.of(piece(run, bay)));
            if (style.isEmpty() || here.isEmpty()) continue;
            for (Finding finding : checks(run, bay, style.get(), here.get().mean()))
                alike.computeIfAbsent(finding.id(), id -> new ArrayList<>()).add(finding);
        }
        List<Finding> worst = new ArrayList<>();
        for (List<Finding> group : alike.values()) {
            Finding first = Findings.join(group).get(0);
            boolean lever = first.id().equals(BoardLever.ID) && style.isPresent();
            worst.add(lever ? withLowRails(first, run, bays, style.get(), wind) : first);
        }
        return worst;
    }

    /**
     * Of one bay.
     *
     * @param ratio of their strength that its rails, or the boards that lie from post to post, take in wind and under their weight
     * @param fails whether that must be mended on the basis of the bay
     */
    record RailUse(Bay bay, double ratio, boolean fails) {}

    List<RailUse> railUses(Run run, List<Bay> bays, RunWind wind) {
        Optional<FenceStyle> style = catalogue.style(run.style());
        List<RailUse> uses = new ArrayList<>();
        for (Bay bay : bays) {
            Optional<TributaryWind> here = wind.on(List.of(piece(run, bay)));
            if (style.isEmpty() || here.isEmpty()) continue;
            double most = 0;
            boolean fails = false;
            for (Finding finding : checks(run, bay, style.get(), here.get().mean())) {
                if (!RailRemedies.RAILS.contains(finding.id())) continue;
                fails |= finding.severity() == Severity.MUST_FIX;
                most = Math.max(
                        most,
                        finding.measure()
                                .map(measure -> measure.ratio().orElse(0))
                                .orElse(0.0));
            }
            uses.add(new RailUse(bay, most, fails));
        }
        return uses;
    }

    private static RunWind.Piece piece(Run run, Bay bay) {
        return new RunWind.Piece(bay.start(), bay.end(), AsBuilt.of(run, bay));
    }

    /** The rails of every bay in a plain gust of the design speed. */
    List<GustPart> rails(Run run, List<Bay> bays, RunWind wind) {
        Optional<FenceStyle> style = catalogue.style(run.style());
        List<GustPart> parts = new ArrayList<>();
        for (Bay bay : bays) {
            Optional<TributaryWind> gust = wind.gustOn(List.of(piece(run, bay)));
            if (style.isEmpty() || gust.isEmpty()) continue;
            double still = ratio(run, bay, style.get(), Pressure.ZERO);
            double blown = ratio(run, bay, style.get(), gust.get().mean()) - still;
            if (blown > 0)
                parts.add(new GustPart(
                        "rails of " + bay.id(), still, blown / Combination.D_W.wind(), 1, reserve(style.get())));
        }
        return parts;
    }

    /** How much of the bending strength of its rails, or of what stands for them, wind and weight take. */
    private double ratio(Run run, Bay bay, FenceStyle style, Pressure wind) {
        return style.boarding().isPresent()
                ? checksOf(run, bay, style).railCheck(wind).windRatio()
                : new FillChecks(catalogue, run, style, basis(run, bay)).windRatio(bay, wind);
    }

    /**
     * How much of the bending strength of its top rail a push along it takes, with the weight it carries; wood with the duration of a live load, 1.0 (NDS 2018
     * Table 2.3.2, on the safe side: some take ten minutes' 1.6). Empty where no
     * rail is worked out.
     *
     * @param pushLbPerIn across the run
     */
    OptionalDouble pushed(Run run, Bay bay, double pushLbPerIn) {
        Optional<FenceStyle> style = catalogue.style(run.style());
        if (style.isEmpty()) return OptionalDouble.empty();
        double asWind = pushLbPerIn / Combination.D_W.wind();
        if (style.get().boarding().isPresent()) {
            RailCheck still = checksOf(run, bay, style.get()).railCheck(Pressure.ZERO);
            return OptionalDouble.of(
                    new RailCheck(still.rail(), still.span(), still.downLbPerIn(), asWind * WIND_DURATION).windRatio());
        }
        return new FillChecks(catalogue, run, style.get(), basis(run, bay)).pushed(bay, asWind, WIND_DURATION);
    }

    /** Width of face whose wind a board takes: its own, or its pitch where the face is open, since wind is counted on the whole of it. */
    private static double boardsShareIn(Boarding boards) {
        double gap = boards.spacing().gap().inches();
        return boards.boardWidth().inches() + (gap > CLOSED_GAP_IN ? gap : 0);
    }

    private static double reserve(FenceStyle style) {
        return style.rails().match(none -> RAIL_RESERVE, wood -> RAIL_RESERVE, steel -> TubeStrength.SAFETY);
    }

    private DesignBasis basis(Run run, Bay bay) {
        return job.basisAt(run, (bay.start().inches() + bay.end().inches()) / 2);
    }

    private BayChecks checksOf(Run run, Bay bay, FenceStyle style) {
        Boarding boards = style.boarding().orElseThrow();
        return BayChecks.of(
                bay.id(),
                bay.slopeLength(),
                run.infill(),
                hangs(run, bay, style),
                style.railsFor(run.infill()),
                edge(style.rails()),
                boards,
                catalogue.species(boards.railSpecies()).orElseThrow(),
                catalogue.species(boards.species()).orElseThrow());
    }

    /** How the boards of a bay hang under its rails, as both were laid out. */
    private HangingBoards hangs(Run run, Bay bay, FenceStyle style) {
        List<RailPiece> rails = bay.rails();
        int asked = style.railsFor(run.infill());
        List<Double> levers = leversIn(bay);
        if (rails.size() < asked || levers.isEmpty()) return HangingBoards.asked(edge(style.rails()));
        RailPiece lowest = rails.get(0);
        RailPiece lowestAsked = rails.get(rails.size() - asked);
        return new HangingBoards(
                AsBuilt.of(run, bay).below(run),
                Length.inches(Math.max(0, Collections.max(levers))),
                rails.size() - asked,
                Length.inches(
                        Math.max(0, lowestAsked.from().inches() - lowest.from().inches())));
    }

    /** Of each board, how far its end hangs below the lowest rail's centre. */
    private static List<Double> leversIn(Bay bay) {
        if (bay.rails().isEmpty()) return List.of();
        RailPiece lowest = bay.rails().get(0);
        List<Double> levers = new ArrayList<>();
        for (FencePicket board : boardsOf(bay)) {
            double middle = board.station().inches() + board.width().inches() / 2;
            double share = (middle - bay.start().inches()) / bay.level().inches();
            double railIn = lowest.from().inches()
                    + (lowest.to().inches() - lowest.from().inches()) * share;
            levers.add(railIn - board.bottom().inches());
        }
        return levers;
    }

    /** A board that hangs too far, with what more rails under the lowest one leave of it anywhere along the run. */
    private Finding withLowRails(Finding worst, Run run, List<Bay> bays, FenceStyle style, RunWind wind) {
        if (!(worst instanceof Checked lever) || lever.severity() == Severity.PASS || run.lowRails()) return worst;
        double ratio = 0;
        for (Bay bay : bays) ratio = Math.max(ratio, afterLowRails(run, bay, style, wind));
        if (ratio > 1) return worst;
        return lever.withRemedies(List.of(new Remedy(
                "low-rails",
                "nail the boards of " + run.id()
                        + " to more rails under the lowest one wherever they hang so far below it",
                OptionalDouble.of(ratio),
                Optional.empty(),
                Optional.of("runs[" + run.id() + "].lowRails=true"))));
    }

    private double afterLowRails(Run run, Bay bay, FenceStyle style, RunWind wind) {
        Boarding boards = style.boarding().orElseThrow();
        List<Double> levers = leversIn(bay);
        Optional<TributaryWind> here = wind.on(List.of(piece(run, bay)));
        if (levers.isEmpty() || here.isEmpty()) return 0;
        double dropIn = Collections.min(levers) - edge(style.rails()).inches();
        double spaceIn = RailRows.of(style, catalogue, run.infill())
                .widestSpace(run.infill())
                .inches();
        double leftIn = LowRails.under(dropIn, 0, spaceIn).isEmpty() ? 0 : dropIn;
        Timber board = new Timber(
                boards.boardWidth(),
                boards.boardThickness(),
                catalogue.species(boards.species()).orElseThrow());
        return BoardLever.ratio(
                board,
                Length.inches(Math.max(0, Collections.max(levers) - leftIn)),
                here.get().mean().inPsi() * boardsShareIn(boards));
    }

    private static List<FencePicket> boardsOf(Bay bay) {
        return bay.fill()
                .match(
                        open -> List.<FencePicket>of(),
                        boards -> boards.row().pickets(),
                        lying -> List.<FencePicket>of(),
                        panel -> List.<FencePicket>of(),
                        fabric -> List.<FencePicket>of(),
                        mesh -> List.<FencePicket>of());
    }

    private static Length edge(FenceRails rails) {
        return rails.match(none -> Length.ZERO, FenceRails.Wood::edge, FenceRails.Steel::edge);
    }

    private List<Finding> checks(Run run, Bay bay, FenceStyle fence, Pressure wind) {
        List<Finding> findings = new ArrayList<>(new FillChecks(catalogue, run, fence, basis(run, bay)).of(bay, wind));
        fence.boarding().ifPresent(boards -> findings.addAll(boards(run, bay, fence, boards, wind)));
        return findings;
    }

    private List<Finding> boards(Run run, Bay bay, FenceStyle fence, Boarding boards, Pressure wind) {
        WoodSpecies rails = catalogue.species(boards.railSpecies()).orElseThrow();
        BayChecks checks = checksOf(run, bay, fence);
        List<Finding> findings = new ArrayList<>(checks.railCheck(wind).findings(bay.id(), basis(run, bay)));
        boolean twoDeep = boards.spacing().laps() && !boards.bothSides();
        Length through = boards.boardThickness().times(twoDeep ? 2 : 1);
        Screw screw = catalogue.screwThrough(through);
        Force allowed = Withdrawal.allowed(
                Withdrawal.screwPerInch(rails.ovenDryGravity(), screw.diameter()),
                screw.inRail(through),
                WIND_DURATION,
                WET_SCREW);
        Area crossing =
                Area.squareInches(boardsShareIn(boards) * checks.busiestShare().inches());
        checks.leverCheck(wind, Length.inches(boardsShareIn(boards)), basis(run, bay))
                .ifPresent(findings::add);
        findings.add(PicketCheck.of(bay.id(), wind, crossing, boards.fastenersPerCrossing(), allowed, basis(run, bay)));
        return findings;
    }
}
