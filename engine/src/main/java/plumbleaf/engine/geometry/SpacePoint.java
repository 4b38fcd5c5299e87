package plumbleaf.engine.geometry;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** A place in space: where it is in plan, and its height. */
public record SpacePoint(PlanPoint plan, Offset elevation) {
    public static SpacePoint inches(double east, double north, double elevation) {
        return new SpacePoint(PlanPoint.inches(east, north), new Offset(elevation));
    }

    /** Height in inches: for formula bodies. */
    public double zIn() {
        return elevation.inches();
    }

    /** Straight-line distance in space. */
    public Length distanceTo(SpacePoint other) {
        double level = plan.inchesTo(other.plan);
        double rise = other.zIn() - zIn();
        return new Length(Math.sqrt(level * level + rise * rise));
    }

    public SpacePoint raised(Offset by) {
        return new SpacePoint(plan, elevation.plus(by));
    }
}
