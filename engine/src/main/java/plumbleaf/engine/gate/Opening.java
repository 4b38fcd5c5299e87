package plumbleaf.engine.gate;

import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Where an opening lies in plan: on one leg of a run, straight past both posts.
 *
 * @param face the post face nearer the run's start, on the run's line
 * @param along the leg's direction, in the run's
 * @param outside which side of the run is outside, walking along it
 * @param station of that face
 * @param clear distance between the post faces
 * @param roomBefore how far the opening may move towards the run's start and stay within the leg
 * @param roomAfter how far it may move the other way
 */
public record Opening(
        PlanPoint face,
        Direction along,
        Side outside,
        Length station,
        Length clear,
        Length roomBefore,
        Length roomAfter) {
    public Opening {
        if (clear.isZero()) throw new IllegalArgumentException("An opening must be wider than nothing");
    }

    /**
     * The opening of a gate on its run.
     *
     * @param posts outside size of the larger of its posts, whose centres stay within the leg
     */
    public static Opening of(Gate gate, Run run, PlanLine line, Length posts) {
        double station = gate.station().inches();
        int leg = line.legAt(Offset.inches(station));
        double centre = posts.inches() / 2;
        double before = station - centre - line.stationOfVertex(leg).inches();
        double after = line.stationOfVertex(leg + 1).inches()
                - station
                - gate.opening().inches()
                - centre;
        return new Opening(
                line.pointAt(gate.station().asOffset(), gate.leftOfLine(run.outside())),
                line.directionAt(gate.station()),
                run.outside(),
                gate.station(),
                gate.opening(),
                Length.inches(Math.max(0, before)),
                Length.inches(Math.max(0, after)));
    }

    /** The same opening further along the leg; negative towards the run's start. */
    public Opening moved(Offset by) {
        double in = by.inches();
        return new Opening(
                face.moved(along, by),
                along,
                outside,
                Length.inches(station.inches() + in),
                clear,
                Length.inches(roomBefore.inches() + in),
                Length.inches(roomAfter.inches() - in));
    }

    /** The same opening so far to the left of the walk. */
    Opening besideLine(Offset left) {
        return new Opening(face.moved(along.left(), left), along, outside, station, clear, roomBefore, roomAfter);
    }

    /** The same place with another clear width: what was measured between the posts as they stand. */
    Opening measured(Length width) {
        return new Opening(face, along, outside, station, width, roomBefore, roomAfter);
    }

    /** Whether the hinges are at the face nearer the run's start: left from outside when outside is on the right, and the other way round. */
    public boolean hingeAtStart(Side hinge) {
        return (hinge == Side.LEFT) == (outside == Side.RIGHT);
    }

    /** The face of the post on that side, as seen from outside. */
    public PlanPoint faceAt(Side side) {
        return hingeAtStart(side) ? face : face.moved(along, clear);
    }
}
