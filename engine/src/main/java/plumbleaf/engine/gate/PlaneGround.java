package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Ground that is one plane. */
public record PlaneGround(Plane plane) implements GroundUnder {
    @Override
    public Offset elevation(PlanPoint at) {
        return plane.heightAt(at);
    }

    @Override
    public List<GroundFacet> around(PlanPoint centre, Length radius) {
        PlanPoint east = centre.moved(Direction.EAST, radius);
        PlanPoint west = centre.moved(Direction.EAST.reversed(), radius);
        return List.of(new GroundFacet(
                List.of(
                        west.moved(Direction.NORTH.reversed(), radius),
                        east.moved(Direction.NORTH.reversed(), radius),
                        east.moved(Direction.NORTH, radius),
                        west.moved(Direction.NORTH, radius)),
                plane));
    }
}
