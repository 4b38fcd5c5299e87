package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Offset;

/**
 * A flat, convex piece of ground in plan.
 *
 * @param corners in order round it
 * @param heights elevation at the corners, in the same order, all in one plane
 */
public record GroundFacet(List<PlanPoint> corners, List<Offset> heights) {
    public GroundFacet {
        corners = List.copyOf(corners);
        heights = List.copyOf(heights);
        if (corners.size() < 3 || corners.size() != heights.size())
            throw new IllegalArgumentException("A facet needs three corners or more, each with its height");
    }
}
