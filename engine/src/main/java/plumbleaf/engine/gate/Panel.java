package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

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

    /** r of the middle of its area: {@code r = r1 + b (h1 + 2 h2) / (3 (h1 + h2))}, heights h1 at the hinge side and h2 at the latch. */
    public Offset middleR() {
        double from = corners.get(0).r().inches();
        double wide = corners.get(1).r().inches() - from;
        double near = heightIn(0);
        double far = heightIn(1);
        return Offset.inches(from + wide * (near + 2 * far) / (3 * (near + far)));
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
