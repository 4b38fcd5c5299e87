package plumbleaf.engine.ground;

import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Where two level tapes from known points meet. With {@code d} between the points and {@code a}, {@code b} the tapes: {@code x = (a2 - b2 + d2) / 2d} along the line from
 * the first to the second, {@code y = sqrt(a2 - x2)} square to it. Tapes too short to meet, or too long to make a triangle, leave the point on the line, what they lack
 * shared in proportion to their lengths.
 * Source: plane geometry, intersection of two circles. Check: TapedPointCheck.
 *
 * @param at where it lies
 * @param lacks what the two tapes lack to meet; zero where they meet
 * @param sine of the angle the tapes meet at: one is best, and an error of a tape grows as one over it
 */
record TapedPoint(PlanPoint at, Length lacks, double sine) {
    static TapedPoint of(PlanPoint first, Length firstTape, PlanPoint second, Length secondTape, boolean left) {
        double d = first.distanceTo(second).inches();
        double a = firstTape.inches();
        double b = secondTape.inches();
        Direction along = Direction.from(first, second);
        double lacks = Math.max(Math.max(d - a - b, Math.abs(a - b) - d), 0);
        if (lacks > 0) {
            double x = a + b < d ? a + lacks * a / (a + b) : onTheLine(a, b, d, lacks);
            return new TapedPoint(first.moved(along, new Offset(x)), new Length(lacks), 0);
        }
        double x = (a * a - b * b + d * d) / (2 * d);
        double y = Math.sqrt(Math.max(0, a * a - x * x));
        PlanPoint foot = first.moved(along, new Offset(x));
        return new TapedPoint(
                foot.moved(along.left(), new Offset(left ? y : -y)), Length.ZERO, d * y / Math.max(a * b, 1e-9));
    }

    /** One tape reaches beyond the other's end: the point lies beyond the point with the shorter tape. */
    private static double onTheLine(double a, double b, double d, double lacks) {
        double share = lacks / (a + b);
        return a > b ? d + b + share * b : -(a + share * a);
    }
}
