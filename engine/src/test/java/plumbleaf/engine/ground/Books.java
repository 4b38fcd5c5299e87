package plumbleaf.engine.ground;

import java.util.List;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Invented ground books for tests. */
final class Books {
    private Books() {}

    static RunLine east(double feet) {
        return new RunLine(
                "R1", new PlanLine(PlanPoint.ORIGIN, List.of(Direction.EAST), List.of(Length.feet(feet))), true);
    }

    static GroundBook book(Shot... shots) {
        return new GroundBook(new Benchmark("nail", Offset.ZERO), List.of(), List.of(shots), List.of(), List.of());
    }

    static Shot station(String id, double feet, double elevationIn) {
        return inside(id, feet, 0, elevationIn);
    }

    static Shot inside(String id, double feet, double insideFeet, double elevationIn) {
        return new Shot(
                id,
                new ShotPlace.OnRun("R1", Length.feet(feet), Offset.feet(insideFeet)),
                new ShotHeight.Elevation(new Offset(elevationIn)),
                "");
    }

    static Shot at(String id, double eastIn, double northIn, double elevationIn) {
        return new Shot(
                id,
                new ShotPlace.At(new Offset(eastIn), new Offset(northIn)),
                new ShotHeight.Elevation(new Offset(elevationIn)),
                "");
    }
}
