package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.ground.SurfaceFacet;
import plumbleaf.engine.ground.SurfacePiece;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Ground that is one plane. */
public record PlaneGround(Plane plane) implements GroundUnder {
    @Override
    public Offset elevation(PlanPoint onTheLine) {
        return plane.heightAt(onTheLine);
    }

    @Override
    public List<SurfaceFacet> around(PlanPoint pin, Length leafRadius, Length cover) {
        PlanPoint east = pin.moved(Direction.EAST, cover);
        PlanPoint west = pin.moved(Direction.EAST.reversed(), cover);
        List<PlanPoint> corners = List.of(
                west.moved(Direction.NORTH.reversed(), cover),
                east.moved(Direction.NORTH.reversed(), cover),
                east.moved(Direction.NORTH, cover),
                west.moved(Direction.NORTH, cover));
        return List.of(new SurfaceFacet(
                corners.stream()
                        .map(corner -> corner.at(plane.heightAt(corner)))
                        .toList(),
                plane,
                false));
    }

    @Override
    public List<SurfacePiece> along(PlanPoint from, PlanPoint to) {
        return List.of(
                new SurfacePiece(Length.ZERO, from.distanceTo(to), plane.heightAt(from), plane.heightAt(to), false));
    }

    @Override
    public Length laterRise(PlanPoint from, PlanPoint to) {
        return Length.ZERO;
    }

    @Override
    public List<Finding> doubts(String part, PlanPoint pin, Length leafRadius, List<PlanPoint> used) {
        return List.of();
    }
}
