package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Site;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.wind.LegWind;
import plumbleaf.engine.wind.Screen;
import plumbleaf.engine.wind.Span;
import plumbleaf.engine.wind.TributaryWind;
import plumbleaf.engine.wind.WallStretch;
import plumbleaf.engine.wind.WindTables;

/** Wind on every leg of a run, in the design wind and in any gust: what its posts and leaves carry. Strength level. */
final class RunWind {
    private final RunLine line;
    private final List<WallStretch> stretches = new ArrayList<>();
    private final List<List<Span>> openings = new ArrayList<>();
    private final List<LegWind> designs = new ArrayList<>();
    private final List<LegWind> plainGusts = new ArrayList<>();
    private final Map<Gust, LegWind> gusts = new LinkedHashMap<>();
    private final SiteWind site;
    private final WindTables tables;

    /** The gates of a leg mostly ask for the same gust. */
    private record Gust(int leg, Speed speed) {}

    /**
     * @param surface height of what stops the wind
     * @param gates on this run
     */
    RunWind(
            Site site,
            Run run,
            RunLine line,
            Screen screen,
            Length surface,
            Length gap,
            List<Gate> gates,
            WindTables tables) {
        this.line = line;
        this.site = site.wind();
        this.tables = tables;
        PlanLine plan = line.line();
        for (int leg = 0; leg < plan.legs(); leg++) {
            Length before = leg > 0 ? plan.lengths().get(leg - 1) : Length.ZERO;
            Length after = leg + 1 < plan.legs() ? plan.lengths().get(leg + 1) : Length.ZERO;
            stretches.add(new WallStretch(plan.lengths().get(leg), surface, surface.plus(gap), screen, before, after));
            openings.add(openings(run, gates, leg));
            designs.add(LegWind.of(this.site, stretches.get(leg), openings.get(leg), tables));
            plainGusts.add(gust(leg, this.site.speed()));
        }
    }

    /** All that the wind on a run is worked out from, the tables apart. */
    record Blowing(RunLine line, SiteWind site, List<WallStretch> stretches, List<List<Span>> openings) {
        Blowing {
            stretches = List.copyOf(stretches);
            openings = List.copyOf(openings);
        }
    }

    Blowing blowing() {
        return new Blowing(line, site, stretches, openings);
    }

    private List<Span> openings(Run run, List<Gate> gates, int leg) {
        double start = line.line().stationOfVertex(leg).inches();
        List<Span> spans = new ArrayList<>();
        for (Gate gate : gates) {
            if (!gate.run().equals(run.id()) || line.line().legAt(gate.station().asOffset()) != leg) continue;
            double from = gate.station().inches() - start;
            spans.add(new Span(
                    Length.inches(from), Length.inches(from + gate.opening().inches())));
        }
        spans.sort(Comparator.comparing(Span::from));
        return spans;
    }

    /** Design wind on a leg. */
    LegWind design(int leg) {
        return designs.get(leg);
    }

    /** Design wind on every leg. */
    List<LegWind> designOfLegs() {
        return List.copyOf(designs);
    }

    /** A gust without the standard's floor on a leg. */
    LegWind gust(int leg, Speed speed) {
        return gusts.computeIfAbsent(new Gust(leg, speed), asked -> blown(leg, speed));
    }

    private LegWind blown(int leg, Speed speed) {
        return LegWind.gust(site, speed, stretches.get(leg), openings.get(leg), tables);
    }

    int legAt(Offset station) {
        return line.line().legAt(station);
    }

    Length legLength(int leg) {
        return line.line().lengths().get(leg);
    }

    /** A station, from the start of its leg. */
    Length alongLeg(int leg, Offset station) {
        double start = line.line().stationOfVertex(leg).inches();
        return Length.inches(Math.max(0, station.inches() - start));
    }

    /** A stretch between two stations of a leg, from the leg's start; empty where none of it lies on the leg. */
    Optional<Span> onLeg(int leg, Offset from, Offset to) {
        double start = line.line().stationOfVertex(leg).inches();
        double length = line.line().lengths().get(leg).inches();
        double first = Math.max(0, from.inches() - start);
        double last = Math.min(length, to.inches() - start);
        return last > first ? Optional.of(new Span(Length.inches(first), Length.inches(last))) : Optional.empty();
    }

    /**
     * What a post carries of the fence: half of each bay beside it. At a corner each leg pushes square to itself; the larger of the two counts, since the wind
     * comes from one side at a time.
     */
    Optional<TributaryWind> on(Offset from, Offset to) {
        return worst(from, to, designs);
    }

    /** The same in a plain gust of the design speed, without the standard's floor: what a rated gust is scaled from. */
    Optional<TributaryWind> gustOn(Offset from, Offset to) {
        return worst(from, to, plainGusts);
    }

    private Optional<TributaryWind> worst(Offset from, Offset to, List<LegWind> winds) {
        Optional<TributaryWind> worst = Optional.empty();
        for (int leg = 0; leg < stretches.size(); leg++) {
            Optional<Span> share = onLeg(leg, from, to);
            if (share.isEmpty()) continue;
            TributaryWind here = winds.get(leg).over(share.get());
            if (worst.isEmpty() || here.momentAtGrade().compareTo(worst.get().momentAtGrade()) > 0)
                worst = Optional.of(here);
        }
        return worst;
    }
}
