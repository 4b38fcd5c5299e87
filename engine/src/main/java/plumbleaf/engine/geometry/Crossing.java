package plumbleaf.engine.geometry;

import java.util.function.DoubleUnaryOperator;

/**
 * Where a rising curve passes zero, held between two places. Each try lies where the straight line between both ends passes zero, moved a little towards the middle, and
 * no farther from it than leaves the rest to halving: so a handful of tries do on what is smooth, and never more than halving takes, a few spared.
 * Source: Oliveira and Takahashi, ACM Transactions on Mathematical Software 47 (2020), algorithm ITP. Check: CrossingTest.
 *
 * @param below the last place found where the curve is not above zero
 * @param above the first place found where it is
 */
public record Crossing(double below, double above) {
    /** How far a try is moved towards the middle, of the square of the range: the algorithm's own usual value. */
    private static final double TOWARDS_MIDDLE = 0.2;

    /** Tries beyond those that halving takes. */
    private static final int SPARE_TRIES = 2;

    /**
     * @param rising must not fall from low to high; it may jump
     * @param low above zero or at it
     * @param atLow the curve there, not above zero
     * @param atHigh the curve at the other end, above zero
     * @param near how far apart the two places that are found may be
     */
    public static Crossing of(
            DoubleUnaryOperator rising, double low, double atLow, double high, double atHigh, double near) {
        double below = low;
        double above = high;
        double atBelow = atLow;
        double atAbove = atHigh;
        double room = near / 2 * (1L << SPARE_TRIES);
        for (double range = near; range < high - low; range *= 2) room *= 2;
        while (above - below > near) {
            double x = tried(below, above, atBelow, atAbove, Math.max(0, room - (above - below) / 2));
            if (x <= below || x >= above) break;
            double at = rising.applyAsDouble(x);
            if (at <= 0) {
                below = x;
                atBelow = at;
            } else {
                above = x;
                atAbove = at;
            }
            room /= 2;
        }
        return new Crossing(below, above);
    }

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
