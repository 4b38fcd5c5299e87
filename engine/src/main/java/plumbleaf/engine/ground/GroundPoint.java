package plumbleaf.engine.ground;

import java.util.List;
import plumbleaf.engine.geometry.SpacePoint;
import plumbleaf.engine.quantity.Offset;

/**
 * A shot reduced to a point.
 *
 * @param on the stations it counts at, one for each place of a run that it lies within 3 in. of
 */
public record GroundPoint(String shot, SpacePoint point, List<OnRun> on) {
    public GroundPoint {
        on = List.copyOf(on);
    }

    /** A run and a station of it. */
    public record OnRun(String run, Offset station) {}
}
