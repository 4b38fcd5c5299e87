package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.ground.Levelled;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Leg;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Start;
import plumbleaf.engine.job.Taped;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

/** Puts the runs of a job on the map. */
public final class RunLines {
    private RunLines() {}

    /** Every run's line, in the order of the job; legs taped along the ground are reduced with the shots of their run. */
    public static List<RunLine> of(Job job) {
        Levelled levelled = Levelled.of(job.ground());
        List<RunLine> lines = new ArrayList<>();
        for (Run run : job.runs()) lines.add(of(run, levelled, lines));
        return List.copyOf(lines);
    }

    private static RunLine of(Run run, Levelled levelled, List<RunLine> before) {
        Profile profile = levelled.profileByStation(run.id());
        List<Direction> directions = new ArrayList<>();
        List<Length> lengths = new ArrayList<>();
        Direction heading = Direction.EAST;
        Length station = Length.ZERO;
        for (Leg leg : run.legs()) {
            Length level = leg.taped() == Taped.LEVEL ? leg.length() : profile.levelLength(station, leg.length());
            Direction last = heading;
            Length behind = lengths.isEmpty() ? level : lengths.get(lengths.size() - 1);
            heading = leg.heading()
                    .match(
                            bearing -> Direction.bearing(bearing.fromNorth()),
                            turn -> last.turnedLeft(turn.left()),
                            diagonal -> last.turnedLeft(diagonal.turn(behind, level)),
                            offsets -> last.turnedLeft(offsets.turn()));
            Angle into = leg.chord().match(chord -> chord.is().into(), straight -> Angle.ZERO);
            heading = heading.turnedLeft(into);
            directions.add(heading);
            lengths.add(level);
            station = station.plus(level);
            Angle outOf = leg.chord().match(chord -> chord.is().outOf(), straight -> Angle.ZERO);
            heading = heading.turnedLeft(outOf);
        }
        return new RunLine(
                run.id(), new PlanLine(start(run.start(), before), directions, lengths), run.outside() == Side.RIGHT);
    }

    private static PlanPoint start(Start start, List<RunLine> before) {
        return start.match(
                at -> new PlanPoint(at.east(), at.north()),
                on -> before.stream()
                        .filter(line -> line.id().equals(on.run()))
                        .findFirst()
                        .map(line -> line.line().pointAt(on.station().asOffset(), line.leftOf(on.inside())))
                        .orElse(PlanPoint.ORIGIN));
    }
}
