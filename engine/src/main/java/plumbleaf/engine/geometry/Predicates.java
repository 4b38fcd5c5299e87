package plumbleaf.engine.geometry;

import java.math.BigInteger;

/**
 * The two questions a triangulation asks, answered exactly on whole nanometres: a quick answer in floating point where its error bound allows one, else in
 * whole numbers of any size. Source of the method: R. Shewchuk, "Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric
 * Predicates", Discrete and Computational Geometry 18 (1997), the filter stage only.
 */
final class Predicates {
    /** Share of the sum of products that rounding can never reach, for the two-by-two and the three-by-three determinant. */
    private static final double SIDE_BOUND = 8e-16;

    private static final double CIRCLE_BOUND = 4e-15;

    private Predicates() {}

    /** Positive when c lies to the left of the walk from a to b, negative to the right, zero on its line. */
    static int side(long ax, long ay, long bx, long by, long cx, long cy) {
        double first = (double) (ax - cx) * (double) (by - cy);
        double second = (double) (ay - cy) * (double) (bx - cx);
        double quick = first - second;
        if (Math.abs(quick) > SIDE_BOUND * (Math.abs(first) + Math.abs(second))) return quick > 0 ? 1 : -1;
        return big(ax - cx)
                .multiply(big(by - cy))
                .subtract(big(ay - cy).multiply(big(bx - cx)))
                .signum();
    }

    /** Positive when d lies inside the circle through a, b and c (which turn left), negative outside, zero on it. */
    static int inCircle(long ax, long ay, long bx, long by, long cx, long cy, long dx, long dy) {
        long adx = ax - dx;
        long ady = ay - dy;
        long bdx = bx - dx;
        long bdy = by - dy;
        long cdx = cx - dx;
        long cdy = cy - dy;
        double aLift = square(adx, ady);
        double bLift = square(bdx, bdy);
        double cLift = square(cdx, cdy);
        double bc = (double) bdx * cdy;
        double cb = (double) cdx * bdy;
        double ca = (double) cdx * ady;
        double ac = (double) adx * cdy;
        double ab = (double) adx * bdy;
        double ba = (double) bdx * ady;
        double quick = aLift * (bc - cb) + bLift * (ca - ac) + cLift * (ab - ba);
        double size = aLift * (Math.abs(bc) + Math.abs(cb))
                + bLift * (Math.abs(ca) + Math.abs(ac))
                + cLift * (Math.abs(ab) + Math.abs(ba));
        if (Math.abs(quick) > CIRCLE_BOUND * size) return quick > 0 ? 1 : -1;
        return exactInCircle(adx, ady, bdx, bdy, cdx, cdy);
    }

    private static int exactInCircle(long adx, long ady, long bdx, long bdy, long cdx, long cdy) {
        BigInteger bc = cross(bdx, bdy, cdx, cdy);
        BigInteger ca = cross(cdx, cdy, adx, ady);
        BigInteger ab = cross(adx, ady, bdx, bdy);
        return lift(adx, ady)
                .multiply(bc)
                .add(lift(bdx, bdy).multiply(ca))
                .add(lift(cdx, cdy).multiply(ab))
                .signum();
    }

    private static double square(long x, long y) {
        return (double) x * x + (double) y * y;
    }

    private static BigInteger cross(long ax, long ay, long bx, long by) {
        return big(ax).multiply(big(by)).subtract(big(bx).multiply(big(ay)));
    }

    private static BigInteger lift(long x, long y) {
        return big(x).multiply(big(x)).add(big(y).multiply(big(y)));
    }

    private static BigInteger big(long value) {
        return BigInteger.valueOf(value);
    }
}
