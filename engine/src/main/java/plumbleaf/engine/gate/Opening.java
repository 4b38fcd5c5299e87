package plumbleaf.engine.gate;

import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Where an opening lies in plan: one leg of a run, straight past both posts.
 *
 * @param east of the post face nearer the run's start, from the job's origin
 * @param north of that face
 * @param directionEast east part of the unit vector along the leg, in the run's direction
 * @param directionNorth north part of it
 * @param outside which side of the run is outside, walking along it
 * @param station of that face
 * @param clear distance between the post faces
 * @param roomBefore how far the opening may move towards the run's start and stay within the leg
 * @param roomAfter how far it may move the other way
 */
public record Opening(
        Offset east,
        Offset north,
        double directionEast,
        double directionNorth,
        Side outside,
        Length station,
        Length clear,
        Length roomBefore,
        Length roomAfter) {
    private static final double UNIT_TOLERANCE = 1e-9;

    public Opening {
        double size = Math.sqrt(directionEast * directionEast + directionNorth * directionNorth);
        if (!(Math.abs(size - 1) < UNIT_TOLERANCE))
            throw new IllegalArgumentException("The direction of an opening must have length 1");
        if (clear.isZero()) throw new IllegalArgumentException("An opening must be wider than nothing");
    }

    /** The same opening further along the leg; negative towards the run's start. */
    public Opening moved(Offset along) {
        double by = along.inches();
        return new Opening(
                Offset.inches(east.inches() + by * directionEast),
                Offset.inches(north.inches() + by * directionNorth),
                directionEast,
                directionNorth,
                outside,
                Length.inches(station.inches() + by),
                clear,
                Length.inches(roomBefore.inches() + by),
                Length.inches(roomAfter.inches() - by));
    }

    /** Whether the hinges are at the face nearer the run's start: left from outside when outside is on the right, and the other way round. */
    public boolean hingeAtStart(Side hinge) {
        return (hinge == Side.LEFT) == (outside == Side.RIGHT);
    }
}
