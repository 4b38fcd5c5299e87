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
import plumbleaf.engine.job.Taped;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

/** Puts the runs of a job on the map. */
public final class RunLines {
    private RunLines() {}

    /** Every run's line, in the order of the job; legs taped along the ground are reduced with the shots of their run. */
    public static List<RunLine> of(Job job) {
        Levelled levelled = Levelled.of(job.ground());
        return job.runs().stream().map(run -> of(run, levelled)).toList();
    }

    static RunLine of(Run run, Levelled levelled) {
        Profile profile = levelled.profileByStation(run.id());
        List<Direction> directions = new ArrayList<>();
        List<Length> lengths = new ArrayList<>();
        Direction heading = Direction.EAST;
        Length station = Length.ZERO;
        for (Leg leg : run.legs()) {
            Direction before = heading;
            heading = leg.heading()
                    .match(bearing -> Direction.bearing(bearing.fromNorth()), turn -> before.turnedLeft(turn.left()));
            Angle into = leg.chord().match(chord -> chord.is().into(), straight -> Angle.ZERO);
            heading = heading.turnedLeft(into);
            Length level = leg.taped() == Taped.LEVEL ? leg.length() : profile.levelLength(station, leg.length());
            directions.add(heading);
            lengths.add(level);
            station = station.plus(level);
            Angle outOf = leg.chord().match(chord -> chord.is().outOf(), straight -> Angle.ZERO);
            heading = heading.turnedLeft(outOf);
        }
        PlanPoint start = new PlanPoint(run.start().east(), run.start().north());
        return new RunLine(run.id(), new PlanLine(start, directions, lengths), run.outside() == Side.RIGHT);
    }
}
