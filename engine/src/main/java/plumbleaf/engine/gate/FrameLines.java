package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * Where the centrelines of a leaf's stiles and rails run. Plain numbers: the inside of the leaf maker.
 *
 * @param outline outside of the frame
 * @param depthIn of the tube in the leaf's plane
 * @param rails from the lowest up, the bottom and the top one among them
 */
record FrameLines(Outline outline, double depthIn, List<RailLine> rails) {
    /** A rail's centreline: its height produced to r = 0, and its slope. */
    record RailLine(double zAtPinIn, double slope) {
        double heightIn(double rIn) {
            return zAtPinIn + slope * rIn;
        }

        double cosine() {
            return 1 / Math.sqrt(1 + slope * slope);
        }
    }

    /**
     * @param midRailsAt heights of the mid rails' centrelines above the outline's bottom at the hinge edge; empty where they stand evenly. A rail at a height of its own climbs by as much of
     *     the way from the bottom's slope to the top's as it is up.
     */
    static FrameLines of(Outline outline, Section tube, int midRails, List<Length> midRailsAt) {
        double depth = tube.depth().inches();
        double hingeStile = outline.hingeEdge().inches() + depth / 2;
        double latchStile = outline.latchEdge().inches() - depth / 2;
        if (!(latchStile > hingeStile)) throw new IllegalArgumentException("The leaf is narrower than its two stiles");
        RailLine bottom =
                inside(outline.bottomAtPin().inches(), outline.bottom().ratio(), depth / 2);
        RailLine top = inside(outline.topAtPin().inches(), outline.top().ratio(), -depth / 2);
        List<RailLine> rails = new ArrayList<>();
        rails.add(bottom);
        for (int i = 1; i <= midRails; i++) {
            double share =
                    midRailsAt.isEmpty() ? i / (midRails + 1.0) : share(outline, bottom, top, midRailsAt.get(i - 1));
            double atHinge = between(bottom.heightIn(hingeStile), top.heightIn(hingeStile), share);
            double atLatch = between(bottom.heightIn(latchStile), top.heightIn(latchStile), share);
            double slope = (atLatch - atHinge) / (latchStile - hingeStile);
            rails.add(new RailLine(atHinge - slope * hingeStile, slope));
        }
        rails.add(top);
        return new FrameLines(outline, depth, List.copyOf(rails));
    }

    double hingeStileIn() {
        return outline.hingeEdge().inches() + depthIn / 2;
    }

    double latchStileIn() {
        return outline.latchEdge().inches() - depthIn / 2;
    }

    /** Inner face of the hinge stile. */
    double hingeFaceIn() {
        return outline.hingeEdge().inches() + depthIn;
    }

    /** Inner face of the latch stile. */
    double latchFaceIn() {
        return outline.latchEdge().inches() - depthIn;
    }

    /** Height of a rail's upper face at r. */
    double overRailIn(int rail, double rIn) {
        return rails.get(rail).heightIn(rIn) + depthIn / 2 / rails.get(rail).cosine();
    }

    /** Height of a rail's lower face at r. */
    double underRailIn(int rail, double rIn) {
        return rails.get(rail).heightIn(rIn) - depthIn / 2 / rails.get(rail).cosine();
    }

    private static RailLine inside(double edgeAtPinIn, double slope, double byIn) {
        return new RailLine(edgeAtPinIn + byIn * Math.sqrt(1 + slope * slope), slope);
    }

    private static double share(Outline outline, RailLine bottom, RailLine top, Length up) {
        double edge = outline.hingeEdge().inches();
        double low = bottom.heightIn(edge);
        return (outline.bottomIn(edge) + up.inches() - low) / (top.heightIn(edge) - low);
    }

    private static double between(double low, double high, double share) {
        return low + (high - low) * share;
    }
}
