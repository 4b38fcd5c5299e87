package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * One piece of mesh or sheet in an opening of the frame.
 *
 * @param id {@code G1a.s1}, the lowest first
 * @param corners lower hinge, lower latch, upper latch, upper hinge
 * @param width of the rectangle it is cut from
 * @param height of the rectangle it is cut from
 * @param area of the piece itself
 * @param edge all round: what the trim is cut from
 * @param weight with its trim
 */
public record Panel(String id, List<Place> corners, Length width, Length height, Area area, Length edge, Force weight) {
    public Panel {
        corners = List.copyOf(corners);
    }

    /** Height of the piece at a share of its width from the hinge side. */
    double heightIn(double share) {
        return topIn(share) - bottomIn(share);
    }

    double bottomIn(double share) {
        return between(corners.get(0), corners.get(1), share);
    }

    double topIn(double share) {
        return between(corners.get(3), corners.get(2), share);
    }

    private static double between(Place a, Place b, double share) {
        return a.z().inches() + share * (b.z().inches() - a.z().inches());
    }
}
