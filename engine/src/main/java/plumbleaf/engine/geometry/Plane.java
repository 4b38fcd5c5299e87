package plumbleaf.engine.geometry;

import java.util.Optional;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * A plane that is not upright: its height over any place in plan.
 *
 * @param through a point of it
 * @param toEast rise over run towards the east
 * @param toNorth rise over run towards the north
 */
public record Plane(SpacePoint through, double toEast, double toNorth) {
    /** Rise over run beyond which a plane counts as upright: three points of one line, but for rounding. */
    private static final double UPRIGHT = 1e6;

    /** The plane through three points; none when they lie on one line in plan. */
    public static Optional<Plane> through(SpacePoint a, SpacePoint b, SpacePoint c) {
        double ux = b.plan().xIn() - a.plan().xIn();
        double uy = b.plan().yIn() - a.plan().yIn();
        double uz = b.zIn() - a.zIn();
        double vx = c.plan().xIn() - a.plan().xIn();
        double vy = c.plan().yIn() - a.plan().yIn();
        double vz = c.zIn() - a.zIn();
        double area = ux * vy - uy * vx;
        double east = (uz * vy - vz * uy) / area;
        double north = (vz * ux - uz * vx) / area;
        boolean flat = Math.abs(east) < UPRIGHT && Math.abs(north) < UPRIGHT;
        return flat ? Optional.of(new Plane(a, east, north)) : Optional.empty();
    }

    /** The plane through a point with these grades along and square to the left of a direction. */
    public static Plane of(SpacePoint through, Direction along, Slope grade, Slope leftwards) {
        Direction left = along.left();
        return new Plane(
                through,
                grade.ratio() * along.east() + leftwards.ratio() * left.east(),
                grade.ratio() * along.north() + leftwards.ratio() * left.north());
    }

    public Offset heightAt(PlanPoint point) {
        return new Offset(through.zIn()
                + toEast * (point.xIn() - through.plan().xIn())
                + toNorth * (point.yIn() - through.plan().yIn()));
    }

    /** Rise over run in a direction. */
    public Slope gradeTowards(Direction direction) {
        return new Slope(toEast * direction.east() + toNorth * direction.north());
    }
}
