package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;

/**
 * A flat, convex piece of ground in plan.
 *
 * @param corners in order round it
 * @param plane it lies in
 */
public record GroundFacet(List<PlanPoint> corners, Plane plane) {
    public GroundFacet {
        corners = List.copyOf(corners);
        if (corners.size() < 3) throw new IllegalArgumentException("A facet needs three corners or more");
    }
}
