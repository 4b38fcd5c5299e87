package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Site;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.line.GatePlace;
import plumbleaf.engine.line.PostRole;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.wind.LegWind;
import plumbleaf.engine.wind.Screen;
import plumbleaf.engine.wind.Span;
import plumbleaf.engine.wind.TributaryWind;
import plumbleaf.engine.wind.WallStretch;
import plumbleaf.engine.wind.WindTables;

/**
 * Wind on every wall of a run, in the design wind and in any gust: what its posts and leaves carry. Strength level.
 *
 * <p>A wall goes from corner to corner. Legs that meet in a mere bend, and the chords of a curve, are one wall of their length along the fence: only so does a free
 * end that is followed by a bend keep its end zone, and no bend in a straight fence gets one. Where a run closes on itself its first wall returns round the corner
 * from its last, or goes on from it where it began in the middle of a side. An end at a house or at another's fence counts as free, on the safe side.
 * Source: ASCE 7-16 Figure 29.3-1 for straight walls; a curve as a straight wall of its length is judgement. Check: RunWindTest.
 */
final class RunWind {
    private final RunLine line;
    private final boolean ring;
    private final List<WallStretch> stretches = new ArrayList<>();
    private final double lengthIn;
    /** How far the first wall reaches back before the run's start, over the end of a run that closes on itself in the middle of a side. */
    private final double backIn;

    private final List<Double> startsIn = new ArrayList<>();
    private final List<List<Span>> openings = new ArrayList<>();
    private final List<LegWind> designs = new ArrayList<>();
    private final List<LegWind> plainGusts = new ArrayList<>();
    private final Map<Gust, LegWind> gusts = new LinkedHashMap<>();
    private final SiteWind site;
    private final WindTables tables;

    private final Map<Taller, LegWind> taller = new LinkedHashMap<>();
    private final Set<Taller> metOnce = new LinkedHashSet<>();

    /** The gates of a wall mostly ask for the same gust. */
    private record Gust(int wall, Speed speed) {}

    /** Neighbours on a level top or on like steps are as tall as each other. */
    private record Taller(int wall, AsBuilt built, boolean plain) {}

    /**
     * A piece of the run and how high it stands.
     *
     * @param from below zero at the first post of a run that closes on itself: so far back along its last wall
     */
    record Piece(Offset from, Offset to, AsBuilt built) {}

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
            List<GatePlace> gates,
            WindTables tables) {
        this.line = line;
        this.ring = run.isRing();
        this.site = site.wind();
        this.tables = tables;
        this.lengthIn = line.line().length().inches();
        List<Length> walls = walls(run, line.line());
        this.backIn = ring && walls.size() > 1 && closesStraight(line.line())
                ? walls.remove(walls.size() - 1).inches()
                : 0;
        if (backIn > 0) walls.set(0, walls.get(0).plus(new Length(backIn)));
        double start = -backIn;
        for (int wall = 0; wall < walls.size(); wall++) {
            Length before = neighbour(walls, wall - 1);
            Length after = neighbour(walls, wall + 1);
            startsIn.add(start);
            start += walls.get(wall).inches();
            stretches.add(new WallStretch(walls.get(wall), surface, surface.plus(gap), screen, before, after));
        }
        for (int wall = 0; wall < walls.size(); wall++) {
            openings.add(openings(run, gates, wall));
            designs.add(LegWind.of(this.site, stretches.get(wall), openings.get(wall), tables));
            plainGusts.add(gust(wall, this.site.speed()));
        }
    }

    /** Lengths from corner to corner. */
    private static List<Length> walls(Run run, PlanLine plan) {
        List<Length> walls = new ArrayList<>();
        for (int leg = 0; leg < plan.legs(); leg++) {
            Length length = plan.lengths().get(leg);
            if (leg > 0 && goesOn(run, plan, leg))
                walls.set(walls.size() - 1, last(walls).plus(length));
            else walls.add(length);
        }
        return walls;
    }

    private static boolean goesOn(Run run, PlanLine plan, int leg) {
        boolean curve = run.legs().get(leg).chord().match(chord -> chord.is().index() > 0, straight -> false);
        return curve || PostRole.atTurn(plan.turnAt(leg)) == PostRole.LINE;
    }

    private static boolean closesStraight(PlanLine plan) {
        return PostRole.atTurn(plan.directions()
                        .get(plan.legs() - 1)
                        .leftTurnTo(plan.directions().get(0)))
                == PostRole.LINE;
    }

    private static Length last(List<Length> walls) {
        return walls.get(walls.size() - 1);
    }

    /** What returns round a corner: nothing at the end of a run that does not close on itself. */
    private Length neighbour(List<Length> walls, int wall) {
        if (wall >= 0 && wall < walls.size()) return walls.get(wall);
        if (!ring) return Length.ZERO;
        return wall < 0 ? last(walls) : walls.get(0);
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

    private List<Span> openings(Run run, List<GatePlace> gates, int wall) {
        double start = startsIn.get(wall);
        List<Span> spans = new ArrayList<>();
        for (GatePlace gate : gates) {
            if (!gate.run().equals(run.id()) || wallAt(gate.station().asOffset()) != wall) continue;
            double from = onItsWall(gate.station().asOffset()) - start;
            spans.add(new Span(
                    Length.inches(from), Length.inches(from + gate.opening().inches())));
        }
        spans.sort(Comparator.comparing(Span::from));
        return spans;
    }

    /** Design wind on a wall. */
    LegWind design(int wall) {
        return designs.get(wall);
    }

    /** Design wind on every wall. */
    List<LegWind> designOfWalls() {
        return List.copyOf(designs);
    }

    /** A gust without the standard's floor on a wall. */
    LegWind gust(int wall, Speed speed) {
        return gusts.computeIfAbsent(new Gust(wall, speed), asked -> blown(wall, speed));
    }

    private LegWind blown(int wall, Speed speed) {
        return LegWind.gust(site, speed, stretches.get(wall), openings.get(wall), tables);
    }

    /** A station as its wall counts: below zero where it lies on what the first wall reaches back over. */
    private double onItsWall(Offset station) {
        boolean back = backIn > 0 && station.inches() >= lengthIn - backIn;
        return back ? station.inches() - lengthIn : station.inches();
    }

    /** The wall a station lies on; a corner belongs to the wall that begins there. */
    int wallAt(Offset station) {
        double stationIn = onItsWall(station);
        for (int wall = 1; wall < startsIn.size(); wall++) {
            if (stationIn < startsIn.get(wall)) return wall - 1;
        }
        return stretches.size() - 1;
    }

    Length wallLength(int wall) {
        return stretches.get(wall).length();
    }

    /** A station, from the start of its wall. */
    Length alongWall(int wall, Offset station) {
        return Length.inches(Math.max(0, onItsWall(station) - startsIn.get(wall)));
    }

    /** The station at a distance along a wall. */
    Offset stationOn(int wall, Length along) {
        double stationIn = startsIn.get(wall) + along.inches();
        return new Offset(stationIn < 0 ? stationIn + lengthIn : stationIn);
    }

    /** A stretch between two stations of a wall, from the wall's start; empty where none of it lies on the wall. */
    Optional<Span> onWall(int wall, Offset from, Offset to) {
        double start = startsIn.get(wall);
        double fromIn = onItsWall(from);
        double toIn = fromIn + to.inches() - from.inches();
        double first = Math.max(0, fromIn - start);
        double last = Math.min(stretches.get(wall).length().inches(), toIn - start);
        return last > first ? Optional.of(new Span(Length.inches(first), Length.inches(last))) : Optional.empty();
    }

    /**
     * What a post carries of the fence: half of each bay beside it. At a corner each wall pushes square to itself; the larger of the two counts, since the wind
     * comes from one side at a time.
     *
     * @param from below zero at the first post of a run that closes on itself: so far back along its last wall
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
        for (int wall = 0; wall < stretches.size(); wall++)
            worst = heavier(worst, onWall(wall, from, to).map(winds.get(wall)::over));
        if (!ring || backIn > 0 || from.inches() >= 0) return worst;
        int lastWall = stretches.size() - 1;
        Offset end = new Offset(lengthIn);
        return heavier(worst, onWall(lastWall, end.plus(from), end).map(winds.get(lastWall)::over));
    }

    /** Design wind on pieces of the run that one post carries, each as high as it was built. */
    Optional<TributaryWind> on(List<Piece> pieces) {
        return onPieces(pieces, false);
    }

    /** The same in a plain gust of the design speed. */
    Optional<TributaryWind> gustOn(List<Piece> pieces) {
        return onPieces(pieces, true);
    }

    /** Pieces of one height are one stretch, with one state of the gates and one case; of unlike ones each counts with its own worst, on the safe side. */
    private Optional<TributaryWind> onPieces(List<Piece> pieces, boolean plain) {
        if (pieces.isEmpty()) return Optional.empty();
        Piece first = pieces.get(0);
        Offset to = pieces.get(pieces.size() - 1).to();
        boolean alike = pieces.stream().allMatch(piece -> piece.built().equals(first.built()));
        if (alike && isAsked(first.built())) return worst(first.from(), to, plain ? plainGusts : designs);
        Optional<TributaryWind> worst = Optional.empty();
        for (int wall = 0; wall < stretches.size(); wall++) {
            Optional<TributaryWind> sum = Optional.empty();
            for (Piece piece : alike ? List.of(new Piece(first.from(), to, first.built())) : pieces) {
                Taller height = new Taller(wall, piece.built(), plain);
                sum = sum(sum, partOn(wall, piece).map(share -> upon(height, share)));
            }
            worst = heavier(worst, sum);
        }
        return worst;
    }

    private Optional<Span> partOn(int wall, Piece piece) {
        boolean beforeStart = ring
                && backIn == 0
                && wall == stretches.size() - 1
                && piece.from().inches() < 0;
        if (!beforeStart) return onWall(wall, piece.from(), piece.to());
        Offset end = new Offset(lengthIn);
        Offset to = piece.to().inches() < 0 ? piece.to() : Offset.ZERO;
        return onWall(wall, end.plus(piece.from()), end.plus(to));
    }

    private boolean isAsked(AsBuilt built) {
        WallStretch asked = stretches.get(0);
        return built.surface().equals(asked.surface()) && built.top().equals(asked.top());
    }

    /** Design wind on a wall as if all of it were built so high. */
    LegWind standing(int wall, AsBuilt built) {
        return standing(wall, built, false);
    }

    private LegWind standing(int wall, AsBuilt built, boolean plain) {
        if (isAsked(built)) return plain ? plainGusts.get(wall) : designs.get(wall);
        return taller.computeIfAbsent(
                new Taller(wall, built, plain),
                asked -> standing(
                        asked, new Span(Length.ZERO, stretches.get(wall).length())));
    }

    /** On rolling ground hardly two posts stand alike: a whole wall is worked out only for a height that is met again, or memory grows with posts times gates. */
    private TributaryWind upon(Taller height, Span share) {
        if (!isAsked(height.built()) && !taller.containsKey(height) && metOnce.add(height))
            return standing(height, share).over(share);
        return standing(height.wall(), height.built(), height.plain()).over(share);
    }

    private LegWind standing(Taller asked, Span share) {
        WallStretch wall = stretches.get(asked.wall());
        WallStretch so = new WallStretch(
                wall.length(),
                asked.built().surface(),
                asked.built().top(),
                wall.screen(),
                wall.returnAtStart(),
                wall.returnAtEnd());
        List<Span> open = openings.get(asked.wall());
        return asked.plain()
                ? LegWind.gust(site, site.speed(), so, open, tables, share)
                : LegWind.of(site, so, open, tables, share);
    }

    private static Optional<TributaryWind> sum(Optional<TributaryWind> one, Optional<TributaryWind> other) {
        if (one.isEmpty() || other.isEmpty()) return one.or(() -> other);
        return Optional.of(one.get().plus(other.get()));
    }

    private static Optional<TributaryWind> heavier(Optional<TributaryWind> one, Optional<TributaryWind> other) {
        if (one.isEmpty() || other.isEmpty()) return one.or(() -> other);
        return other.get().momentAtGrade().compareTo(one.get().momentAtGrade()) > 0 ? other : one;
    }
}
