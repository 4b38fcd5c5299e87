package plumbleaf.engine.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.Foot;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Puts levelled shots on the map: by station of their run, by east and north, or where two tapes meet. */
final class Placing {
    /** Nearer than this to a run's line a shot counts as on it (conventions of the ground book). */
    static final Length ON_LINE = Length.inches(3);

    private final Levelled levelled;
    private final List<RunLine> runs;
    private final GroundFindings say;
    private final List<Finding> findings = new ArrayList<>();

    Placing(Levelled levelled, List<RunLine> runs, GroundFindings say) {
        this.levelled = levelled;
        this.runs = runs;
        this.say = say;
    }

    List<Finding> findings() {
        return findings;
    }

    static boolean isOnLineOf(String run, Shot shot) {
        return shot.place()
                .match(
                        on -> on.run().equals(run) && near(on.inside()),
                        after -> after.run().equals(run) && near(after.inside()),
                        at -> false,
                        tapes -> false);
    }

    private static boolean near(Offset inside) {
        return inside.size().compareTo(ON_LINE) <= 0;
    }

    /** Every shot that has a place; those taped from others once these have theirs. */
    List<GroundPoint> all() {
        List<GroundPoint> points = new ArrayList<>();
        Map<String, PlanPoint> known = new TreeMap<>();
        List<LevelledShot> waiting = new ArrayList<>();
        for (LevelledShot shot : levelled.shots()) {
            if (tapes(shot).isPresent()) waiting.add(shot);
            else place(shot).ifPresent(point -> keep(point, points, known));
        }
        for (int before = -1; before != waiting.size(); ) {
            before = waiting.size();
            List<LevelledShot> still = new ArrayList<>();
            for (LevelledShot shot : waiting) {
                Optional<GroundPoint> point = byTapes(shot, tapes(shot).orElseThrow(), known);
                if (point.isEmpty()) still.add(shot);
                else keep(point.get(), points, known);
            }
            waiting = still;
        }
        for (LevelledShot shot : waiting) findings.add(say.noPlace(shot.id()));
        return points;
    }

    private static void keep(GroundPoint point, List<GroundPoint> points, Map<String, PlanPoint> known) {
        points.add(point);
        known.put(point.shot(), point.point().plan());
    }

    private static Optional<ShotPlace.Tapes> tapes(LevelledShot shot) {
        return shot.shot()
                .place()
                .match(on -> Optional.empty(), after -> Optional.empty(), at -> Optional.empty(), Optional::of);
    }

    private Optional<GroundPoint> byTapes(LevelledShot shot, ShotPlace.Tapes tapes, Map<String, PlanPoint> known) {
        PlanPoint from = known.get(tapes.from());
        PlanPoint and = known.get(tapes.and());
        if (from == null || and == null || from.isSamePlace(and)) return Optional.empty();
        if (tapes.check().filter(check -> !known.containsKey(check.from())).isPresent()) return Optional.empty();
        TapedPoint point = TapedPoint.of(from, tapes.length(), and, tapes.andLength(), tapes.left());
        findings.add(say.tapes(shot.id(), tapes, point));
        tapes.check().ifPresent(check -> closes(shot.id(), check, point, known));
        return Optional.of(byPlan(shot, point.at(), ""));
    }

    private void closes(String shot, ShotPlace.Tape check, TapedPoint point, Map<String, PlanPoint> known) {
        PlanPoint third = Objects.requireNonNull(known.get(check.from()));
        findings.add(say.thirdTape(shot, check, third.distanceTo(point.at())));
    }

    /** The point of a shot; none when its run or the shot it was taped from is unknown. */
    private Optional<GroundPoint> place(LevelledShot levelledShot) {
        Shot shot = levelledShot.shot();
        return shot.place()
                .match(
                        on -> byStation(
                                levelledShot, on.run(), Optional.of(on.station().asOffset()), on.inside()),
                        after -> taped(levelledShot, after),
                        at -> Optional.of(byPlan(levelledShot, new PlanPoint(at.east(), at.north()), "")),
                        tapes -> Optional.empty());
    }

    private Optional<GroundPoint> taped(LevelledShot shot, ShotPlace.After after) {
        Length along = levelled.alongGround(shot.shot(), after);
        double lostIn = after.over().inches() - along.inches();
        boolean matters = lostIn > GroundFindings.allowed(after.over()).inches();
        // A shot further below or above the other than the tape is long can only have been taped level.
        boolean asked = after.lay() == TapeLay.UNSAID && matters && !along.isZero();
        if (after.lay().isAlongGround()) findings.add(say.tapedAlong(shot.id(), after, along));
        else if (asked) findings.add(say.tapeUnsaid(shot.id(), after, along));
        return byStation(shot, after.run(), levelled.stationOf(shot.shot()), after.inside());
    }

    private Optional<GroundPoint> byStation(LevelledShot shot, String runId, Optional<Offset> station, Offset inside) {
        Optional<RunLine> run =
                runs.stream().filter(line -> line.id().equals(runId)).findFirst();
        if (run.isEmpty() || station.isEmpty()) {
            findings.add(say.noPlace(shot.id()));
            return Optional.empty();
        }
        RunLine line = run.get();
        if (station.get().inches() > line.line().length().inches() + ON_LINE.inches())
            findings.add(say.beyondRun(
                    shot.id(), runId, station.get().size(), line.line().length()));
        PlanPoint plan = line.line().pointAt(station.get(), line.leftOf(inside));
        GroundPoint elsewhere = byPlan(shot, plan, runId);
        if (!near(inside)) return Optional.of(elsewhere);
        List<GroundPoint.OnRun> on = new ArrayList<>();
        on.add(new GroundPoint.OnRun(runId, station.get()));
        on.addAll(elsewhere.on());
        for (Foot foot : line.line().feetWithin(ON_LINE, plan)) {
            boolean again = Math.abs(foot.station().inches() - station.get().inches()) > 2 * ON_LINE.inches();
            if (again) on.add(new GroundPoint.OnRun(runId, foot.station().asOffset()));
        }
        return Optional.of(new GroundPoint(shot.id(), elsewhere.point(), on));
    }

    private GroundPoint byPlan(LevelledShot shot, PlanPoint plan, String butNot) {
        List<GroundPoint.OnRun> on = new ArrayList<>();
        for (RunLine run : runs) {
            if (run.id().equals(butNot)) continue;
            for (Foot foot : run.line().feetWithin(ON_LINE, plan))
                on.add(new GroundPoint.OnRun(run.id(), foot.station().asOffset()));
        }
        return new GroundPoint(shot.id(), plan.at(shot.elevation()), on);
    }
}
