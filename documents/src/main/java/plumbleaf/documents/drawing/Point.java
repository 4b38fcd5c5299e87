package plumbleaf.documents.drawing;

import plumbleaf.engine.quantity.DecimalText;

/** A place on a drawing: x to the right, y up, in inches. */
public record Point(double x, double y) {
    public Point {
        if (!(Math.abs(x) < 1e8 && Math.abs(y) < 1e8))
            throw new IllegalArgumentException(
                    "A place on a drawing is within 1e8 in, was " + shown(x) + ", " + shown(y));
    }

    private static String shown(double value) {
        return Double.isFinite(value) ? DecimalText.shortest(value) : "no number";
    }

    public static Point at(double x, double y) {
        return new Point(x, y);
    }

    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** The place a distance away in a direction. */
    public Point towards(double directionRad, double distance) {
        return new Point(x + distance * StrictMath.cos(directionRad), y + distance * StrictMath.sin(directionRad));
    }

    public Point middle(Point other) {
        return new Point((x + other.x) / 2, (y + other.y) / 2);
    }

    /** The place at a share of the way to another: 0 here, 1 there. */
    public Point shareOf(double share, Point other) {
        return new Point(x + share * (other.x - x), y + share * (other.y - y));
    }

    public double distance(Point other) {
        return StrictMath.hypot(other.x - x, other.y - y);
    }

    /** Direction to another place, anticlockwise from the right. */
    public double direction(Point other) {
        return StrictMath.atan2(other.y - y, other.x - x);
    }

    public Point rotatedAbout(Point centre, double turnRad) {
        double cos = StrictMath.cos(turnRad);
        double sin = StrictMath.sin(turnRad);
        double dx = x - centre.x;
        double dy = y - centre.y;
        return new Point(centre.x + dx * cos - dy * sin, centre.y + dx * sin + dy * cos);
    }
}
