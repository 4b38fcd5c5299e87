package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * What a leaf's swing does over the ground.
 *
 * @param opens how far it is asked to open
 * @param least least clearance of the unloaded leaf's plane (n = 0) from closed to {@code opens}
 * @param leastOfFaces the same over the whole thickness of the leaf, both faces: never more
 * @param running least over the thickness, less the leaf's drop and the later rise of the ground
 * @param maxAngle how far it opens before anything is touched, at most 180 degrees
 * @param limitedBy what is touched there
 * @param shotError how far the measured heights may be off
 * @param closedLargest largest clearance of the closed leaf, what the gap rule looks at
 * @param curve least clearance at each angle
 */
public record Swing(
        Hand hand,
        Angle opens,
        Clearance least,
        Clearance leastOfFaces,
        Clearance running,
        Angle maxAngle,
        SwingLimit limitedBy,
        Length shotError,
        Clearance closedLargest,
        List<Clearance> curve,
        ClearanceMap map) {
    public Swing {
        curve = List.copyOf(curve);
    }

    /** Whether the leaf opens as far as asked with nothing touched, drop and later ground counted. */
    public boolean clears() {
        return running.clear().inches() >= 0 && leastOfFaces.clear().inches() >= 0 && maxAngle.compareTo(opens) >= 0;
    }

    /** How short the swing is: the smaller of the clearance as built and in service. */
    public Offset worst() {
        return running.clear().compareTo(leastOfFaces.clear()) < 0 ? running.clear() : leastOfFaces.clear();
    }
}
