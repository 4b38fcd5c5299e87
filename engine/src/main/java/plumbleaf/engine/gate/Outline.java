package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * The outside of a leaf's frame in its own plane, and the crest of its infill above it. Bottom and top of the frame are straight; z is from grade at the
 * pin axis.
 *
 * @param hingeEdge r of the hinge edge
 * @param latchEdge r of the latch edge
 * @param bottomAtPin z of the bottom line produced to r = 0: the leaf's {@code bottomGap}
 * @param topAtPin z of the top line produced to r = 0
 * @param bottom grade of the bottom from hinge to latch, + up
 * @param top grade of the top
 * @param infillBelow how far the infill hangs below the bottom
 * @param crest how the infill ends above the frame's top
 */
public record Outline(
        Offset hingeEdge,
        Offset latchEdge,
        Offset bottomAtPin,
        Offset topAtPin,
        Slope bottom,
        Slope top,
        Length infillBelow,
        Crest crest) {
    /** With the infill ending at the frame's top. */
    public Outline(
            Offset hingeEdge,
            Offset latchEdge,
            Offset bottomAtPin,
            Offset topAtPin,
            Slope bottom,
            Slope top,
            Length infillBelow) {
        this(hingeEdge, latchEdge, bottomAtPin, topAtPin, bottom, top, infillBelow, Crest.LEVEL_WITH_FRAME);
    }

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

    /** Height of the infill's top at r. */
    public double crestIn(double rIn) {
        return topIn(rIn) + crest.overFrameIn(rIn - hingeEdge.inches(), width());
    }

    /** Height of the infill's bottom at r. */
    public double infillBottomIn(double rIn) {
        return bottomIn(rIn) - infillBelow.inches();
    }

    /** The whole face that is seen, infill below and above the frame counted. */
    public Area face() {
        double w = width().inches();
        double middle = (hingeEdge.inches() + latchEdge.inches()) / 2;
        double straight = w * (topIn(middle) - infillBottomIn(middle));
        return Area.squareInches(straight + crest.areaIn2(width()));
    }

    /** The infill's top from the hinge edge to the latch edge as straight chords that leave the curve by at most {@link Crest#SAGITTA}. */
    public List<Place> crestLine() {
        List<Place> points = new ArrayList<>();
        int chords = crest.chords(width());
        for (int i = 0; i <= chords; i++) {
            double r = hingeEdge.inches() + width().inches() * i / chords;
            points.add(Place.inPlane(r, crestIn(r)));
        }
        return List.copyOf(points);
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
                infillBelow,
                crest);
    }

    private static Length distance(Place a, Place b) {
        double dr = b.r().inches() - a.r().inches();
        double dz = b.z().inches() - a.z().inches();
        return Length.inches(Math.sqrt(dr * dr + dz * dz));
    }
}
