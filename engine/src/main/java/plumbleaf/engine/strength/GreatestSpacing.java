package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Length;

/** The widest spacing of posts at which everything asked about still passes: solved for, not looked up. */
public final class GreatestSpacing {
    /** How near the answer is found: 10 ft down to a ten-billionth of an inch. */
    private static final double NEAR = 1.0 / (1L << 40);

    /** How far a try is moved towards the middle, of the square of the range: the algorithm's own usual value. */
    private static final double TOWARDS_MIDDLE = 0.2;

    /** Tries beyond those that halving takes. */
    private static final int SPARE_TRIES = 2;

    /** The greatest utilisation at a spacing; must not fall as the spacing grows. */
    public interface Utilisation {
        double at(Length spacing);
    }

    private GreatestSpacing() {}

    /**
     * @param most the widest that rails, fabric or custom allow
     * @return zero where even no spacing at all passes
     */
    public static Length solve(Utilisation utilisation, Length most) {
        double atHigh = utilisation.at(most) - 1;
        if (atHigh <= 0) return most;
        double low = 0;
        double high = most.inches();
        double atLow = utilisation.at(Length.ZERO) - 1;
        if (atLow > 0) return Length.ZERO;
        double near = NEAR * high;
        double room = near / 2 * (1L << (40 + SPARE_TRIES));
        while (high - low > near) {
            double x = tried(low, high, atLow, atHigh, Math.max(0, room - (high - low) / 2));
            double at = utilisation.at(Length.inches(x)) - 1;
            if (at <= 0) {
                low = x;
                atLow = at;
            } else {
                high = x;
                atHigh = at;
            }
            room /= 2;
        }
        return Length.inches(low);
    }

    /**
     * Where the straight line between both ends passes one, moved a little towards the middle, and no farther from it than leaves the rest to halving: so a handful of
     * tries do on what is smooth, and never more than halving takes, a few spared. Source: Oliveira and Takahashi, ACM Transactions on Mathematical Software 47 (2020),
     * algorithm ITP. Check: PostSpacingCheck, PostCheckTest.
     */
    private static double tried(double low, double high, double atLow, double atHigh, double room) {
        double middle = (low + high) / 2;
        double straight = (low * atHigh - high * atLow) / (atHigh - atLow);
        if (!(straight > low && straight < high)) return middle;
        double towards = Math.signum(middle - straight);
        double move = TOWARDS_MIDDLE * (high - low) * (high - low) / high;
        double nearer = move <= Math.abs(middle - straight) ? straight + towards * move : middle;
        return Math.abs(nearer - middle) <= room ? nearer : middle - towards * room;
    }
}
