package plumbleaf.engine.geometry;

import plumbleaf.engine.quantity.Angle;

/**
 * A direction in plan, as a vector of length one.
 *
 * @param east its part to the east, -1 to 1
 * @param north its part to the north, -1 to 1
 */
public record Direction(double east, double north) {
    public static final Direction NORTH = new Direction(0, 1);
    public static final Direction EAST = new Direction(1, 0);

    /** How far from one the length may be: rounding in the last digits only. */
    private static final double UNIT_TOLERANCE = 1e-9;

    /** Parts smaller than this are the rounding of a right angle and count as none. */
    private static final double ROUNDING = 1e-15;

    public Direction {
        if (!(Math.abs(east * east + north * north - 1) < UNIT_TOLERANCE))
            throw new IllegalArgumentException("A direction has length one");
        east = Math.abs(east) < ROUNDING ? 0 : east;
        north = Math.abs(north) < ROUNDING ? 0 : north;
    }

    /** Clockwise from north, as a compass has it. */
    public static Direction bearing(Angle fromNorth) {
        return new Direction(StrictMath.sin(fromNorth.radians()), StrictMath.cos(fromNorth.radians()));
    }

    /** From one place to another; the two must differ. */
    public static Direction from(PlanPoint here, PlanPoint there) {
        double length = here.inchesTo(there);
        if (!(length > 0)) throw new IllegalArgumentException("No direction from a point to itself");
        return new Direction((there.xIn() - here.xIn()) / length, (there.yIn() - here.yIn()) / length);
    }

    /** Clockwise from north, 0 to 360 degrees. */
    public Angle bearing() {
        double radians = StrictMath.atan2(east, north);
        return new Angle(radians < 0 ? radians + 2 * Math.PI : radians);
    }

    /** Turned to the left (anticlockwise seen from above); negative turns right. */
    public Direction turnedLeft(Angle by) {
        double cos = StrictMath.cos(by.radians());
        double sin = StrictMath.sin(by.radians());
        return unit(east * cos - north * sin, east * sin + north * cos);
    }

    /** Square to the left. */
    public Direction left() {
        return new Direction(-north, east);
    }

    /** Square to the right. */
    public Direction right() {
        return new Direction(north, -east);
    }

    public Direction reversed() {
        return new Direction(-east, -north);
    }

    /** How far another direction turns to the left of this one, -180 to 180 degrees. */
    public Angle leftTurnTo(Direction other) {
        double across = east * other.north - north * other.east;
        double along = east * other.east + north * other.north;
        return new Angle(StrictMath.atan2(across, along));
    }

    /** The direction that halves the angle between this and another; for opposite ones, square to the left of this. */
    public Direction halfWayTo(Direction other) {
        double x = east + other.east;
        double y = north + other.north;
        double length = Math.sqrt(x * x + y * y);
        return length < UNIT_TOLERANCE ? left() : new Direction(x / length, y / length);
    }

    private static Direction unit(double x, double y) {
        double length = Math.sqrt(x * x + y * y);
        return new Direction(x / length, y / length);
    }
}
