package plumbleaf.engine.rule;

import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.SightTriangle;

/**
 * The part of a straight piece of fence that lies in a sight triangle: the piece cut by the three sides, each of which keeps what lies on the triangle's own side.
 * Source: plane geometry. Check: SiteRulesTest.
 */
public record SightLine(double from, double to) {
    /** Shorter overlaps are a touch at a corner. */
    private static final double TOUCH = 1e-9;

    /** Shares of the way from one point to the other between which the piece lies in the triangle; not {@link #isInside} where it does not. */
    public static SightLine of(SightTriangle sight, PlanPoint from, PlanPoint to) {
        double ax = sight.east().inches();
        double ay = sight.north().inches();
        double bx =
                ax + StrictMath.sin(sight.first().radians()) * sight.firstLeg().inches();
        double by =
                ay + StrictMath.cos(sight.first().radians()) * sight.firstLeg().inches();
        double cx = ax
                + StrictMath.sin(sight.second().radians()) * sight.secondLeg().inches();
        double cy = ay
                + StrictMath.cos(sight.second().radians()) * sight.secondLeg().inches();
        double[] x = {ax, bx, cx};
        double[] y = {ay, by, cy};
        double turn = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
        double first = 0;
        double last = 1;
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            double atFrom = side(x[i], y[i], x[j], y[j], from) * Math.signum(turn);
            double atTo = side(x[i], y[i], x[j], y[j], to) * Math.signum(turn);
            if (atFrom < 0 && atTo < 0) return new SightLine(0, 0);
            if (atFrom < 0) first = Math.max(first, atFrom / (atFrom - atTo));
            if (atTo < 0) last = Math.min(last, atFrom / (atFrom - atTo));
        }
        return new SightLine(first, Math.max(first, last));
    }

    private static double side(double ax, double ay, double bx, double by, PlanPoint at) {
        return (bx - ax) * (at.yIn() - ay) - (by - ay) * (at.xIn() - ax);
    }

    public boolean isInside() {
        return to - from > TOUCH;
    }
}
