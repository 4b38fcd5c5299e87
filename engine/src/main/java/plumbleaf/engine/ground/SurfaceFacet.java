package plumbleaf.engine.ground;

import java.util.List;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.geometry.SpacePoint;

/**
 * A flat, convex piece of the surface.
 *
 * @param corners in order, turning left seen from above
 * @param extrapolated whether it lies outside the shots
 */
public record SurfaceFacet(List<SpacePoint> corners, Plane plane, boolean extrapolated) {
    public SurfaceFacet {
        corners = List.copyOf(corners);
    }
}
