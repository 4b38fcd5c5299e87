package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * The outside of a leaf's frame in its own plane. Bottom and top are straight; z is from grade at the pin axis.
 *
 * @param hingeEdge r of the hinge edge
 * @param latchEdge r of the latch edge
 * @param bottomAtPin z of the bottom line produced to r = 0: the leaf's {@code bottomGap}
 * @param topAtPin z of the top line produced to r = 0
 * @param bottom grade of the bottom from hinge to latch, + up
 * @param top grade of the top
 * @param infillBelow how far the infill hangs below the bottom
 */
public record Outline(
        Offset hingeEdge,
        Offset latchEdge,
        Offset bottomAtPin,
        Offset topAtPin,
        Slope bottom,
        Slope top,
        Length infillBelow) {
    public Outline {
        if (!(latchEdge.inches() > hingeEdge.inches()))
            throw new IllegalArgumentException("The gaps leave no width for the leaf");
        if (!(height(hingeEdge, bottomAtPin, topAtPin, bottom, top) > 0
                && height(latchEdge, bottomAtPin, topAtPin, bottom, top) > 0))
            throw new IllegalArgumentException("The leaf's top meets its bottom");
    }

    private static double height(Offset r, Offset bottomAtPin, Offset topAtPin, Slope bottom, Slope top) {
        return topAtPin.inches() - bottomAtPin.inches() + r.inches() * (top.ratio() - bottom.ratio());
    }

    public Length width() {
        return Length.inches(latchEdge.inches() - hingeEdge.inches());
    }

    double bottomIn(double rIn) {
        return bottomAtPin.inches() + rIn * bottom.ratio();
    }

    double topIn(double rIn) {
        return topAtPin.inches() + rIn * top.ratio();
    }

    /** Lower hinge corner, lower latch corner, upper latch corner, upper hinge corner. */
    public List<Place> corners() {
        double hinge = hingeEdge.inches();
        double latch = latchEdge.inches();
        return List.of(
                Place.inPlane(hinge, bottomIn(hinge)),
                Place.inPlane(latch, bottomIn(latch)),
                Place.inPlane(latch, topIn(latch)),
                Place.inPlane(hinge, topIn(hinge)));
    }

    /** The shop check of squareness: lower hinge to upper latch corner, then lower latch to upper hinge corner. */
    public List<Length> diagonals() {
        List<Place> corners = corners();
        return List.of(distance(corners.get(0), corners.get(2)), distance(corners.get(1), corners.get(3)));
    }

    /** The same outline raised by a length. */
    Outline raised(Length by) {
        return new Outline(
                hingeEdge,
                latchEdge,
                Offset.inches(bottomAtPin.inches() + by.inches()),
                Offset.inches(topAtPin.inches() + by.inches()),
                bottom,
                top,
                infillBelow);
    }

    private static Length distance(Place a, Place b) {
        double dr = b.r().inches() - a.r().inches();
        double dz = b.z().inches() - a.z().inches();
        return Length.inches(Math.sqrt(dr * dr + dz * dz));
    }
}
