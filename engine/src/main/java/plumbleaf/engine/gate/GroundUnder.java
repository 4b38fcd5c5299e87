package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** The ground as a gate asks for it. */
public interface GroundUnder {
    /** Elevation at a plan point. */
    Offset elevation(PlanPoint at);

    /** Flat pieces that together cover the disc round a point, without gaps; where they overlap the worst counts. */
    List<GroundFacet> around(PlanPoint centre, Length radius);
}
