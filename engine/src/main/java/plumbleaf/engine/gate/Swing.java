package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.WorkedLine;

/**
 * What a leaf's swing does over the ground.
 *
 * @param opens how far it is asked to open
 * @param least least clearance of the unloaded leaf's plane (n = 0) from closed to {@code opens}
 * @param leastOfFaces the same over the whole thickness of the leaf, both faces: never more
 * @param running least over the thickness, less the leaf's drop and the later rise of the ground
 * @param closedThere clearance of the closed leaf at the radius of {@code running}
 * @param maxAngle how far it opens before anything is touched, at most 180 degrees
 * @param limitedBy what is touched there
 * @param shotError how far the measured heights may be off
 * @param closedLargest largest clearance of the closed leaf, what the gap rule looks at
 * @param curve least clearance at each angle
 * @param worked least clearance of the leaf's plane by hand, line by line; none where the swing was only tried
 */
public record Swing(
        Hand hand,
        Angle opens,
        Clearance least,
        Clearance leastOfFaces,
        Clearance running,
        Offset closedThere,
        Angle maxAngle,
        SwingLimit limitedBy,
        Length shotError,
        Clearance closedLargest,
        List<Clearance> curve,
        ClearanceMap map,
        List<WorkedLine> worked) {
    /** A wanted angle that is missed by less than this is reached: below what anyone can see. */
    private static final double ANGLE_TOLERANCE = 1e-6;

    public Swing {
        curve = List.copyOf(curve);
        worked = List.copyOf(worked);
    }

    /** Whether the leaf opens as far as asked with the ground untouched, drop and later ground counted. */
    public boolean clearsGround() {
        return running.clear().inches() >= 0;
    }

    /** Whether nothing else stands in the way before that. */
    public boolean clearsObstacles() {
        return limitedBy.match(
                nothing -> true, ground -> true, struck -> maxAngle.radians() >= opens.radians() - ANGLE_TOLERANCE);
    }

    /** Room the swing takes below the closed leaf against the room there is, where it is tightest. */
    public Measure room() {
        double there = closedThere.inches();
        return Measure.demand(there - running.clear().inches(), there, "in");
    }
}
