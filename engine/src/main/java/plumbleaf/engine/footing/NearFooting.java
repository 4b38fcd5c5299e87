package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Length;

/** What is left of the soil's lateral bearing on a footing that another stands near, both pushed the same way: the ground between them counts once. */
public final class NearFooting {
    /** Further apart than this many widths no two footings feel each other, whatever the way they are pushed. */
    public static final double FAR_WIDTHS = 7;

    private NearFooting() {}

    /**
     * {@code beta = sqrt(bi^2 cos^2 w + bs^2 sin^2 w)}, of two footings behind each other {@code bi = 0.48 (s/b)^0.38}, the one in the other's shadow, and side by side
     * {@code bs = 0.64 (s/b)^0.34}, each at most 1 and s/b at least 1. Holds for piers that are pushed the same way, as by wind; one that stands still beside a pushed one only helps.
     * Source: Reese and Van Impe, Single Piles and Pile Groups under Lateral Loading (2001), as in Kouretzis, Fundamentals of Foundation Engineering, 6.11, example 6.16 (side by side and
     * skewed; bi from memory). Check: NearFootingCheck.
     *
     * @param apart s, centre to centre
     * @param width b of the hole
     * @param inLine cos^2 of the angle w between the push and the line from one footing to the other
     */
    public static double factor(Length apart, Length width, double inLine) {
        double widths = Math.max(1, apart.inches() / width.inches());
        double behind = Math.min(1, 0.48 * StrictMath.pow(widths, 0.38));
        double beside = sideBySide(widths);
        return Math.sqrt(behind * behind * inLine + beside * beside * (1 - inLine));
    }

    /** {@code 0.64 (s/b)^0.34}. */
    static double sideBySide(double widths) {
        return Math.min(1, 0.64 * StrictMath.pow(widths, 0.34));
    }
}
