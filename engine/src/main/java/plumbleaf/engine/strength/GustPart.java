package plumbleaf.engine.strength;

import java.util.function.DoubleUnaryOperator;
import plumbleaf.engine.action.Combination;

/**
 * One link of a build in the wind: all numbers in the same unit.
 *
 * @param link {@code post P3}, {@code footing F3}
 * @param standing what dead load takes of it
 * @param windAtSpeed strength-level wind demand at the speed asked about, no floor, no 0.6
 * @param allowable what it may carry in allowable-stress design
 * @param ultimate what it is expected to carry
 */
public record GustPart(String link, double standing, double windAtSpeed, double allowable, double ultimate) {
    /** Allowable-stress design takes 0.6 of strength-level wind. Source: ASCE 7-16 2.4.1. */
    private static final double ASD = Combination.D_W.wind();

    /** Halvings of the times a wind may grow; leaves less than 1e-12 of the bracket. */
    private static final int HALVINGS = 50;

    /** So many of them are spared: what is left of the bracket then is still far wider than a use is sure to. */
    private static final int BY_CHORDS = 40;

    /** A part that so many times the wind does not trouble is not troubled by any. */
    private static final double NEVER = 4096;

    /**
     * A part whose use does not grow in step with the wind, since what stands and what blows pull different ways: the times are solved for.
     *
     * @param allowableUse share of the allowable at so many times the wind, with 0.6 of it, as allowable-stress design has it
     * @param ultimateUse share of the expected ultimate, with the whole of it
     */
    public static GustPart solved(String link, DoubleUnaryOperator allowableUse, DoubleUnaryOperator ultimateUse) {
        return new GustPart(link, 0, 1, ASD * times(allowableUse), times(ultimateUse));
    }

    /** The most times at which a use that grows outward stays within 1; none where it is beyond 1 without wind. */
    private static double times(DoubleUnaryOperator use) {
        double atLow = use.applyAsDouble(0) - 1;
        if (atLow > 0) return 0;
        double low = 0;
        double high = 1;
        double atHigh = use.applyAsDouble(high) - 1;
        while (atHigh <= 0 && high < NEVER) {
            low = high;
            atLow = atHigh;
            high *= 2;
            atHigh = use.applyAsDouble(high) - 1;
        }
        return high >= NEVER ? NEVER : within(use, low, atLow, high, atHigh);
    }

    /**
     * What halving the bracket so often would come to, in little more than half the looks: the bracket is narrowed by chords to a cell of the places that halving looks at, and only in that cell
     * halved.
     */
    private static double within(DoubleUnaryOperator use, double low, double atLow, double high, double atHigh) {
        double cell = (high - low) * Math.scalb(1.0, -BY_CHORDS);
        double near = low + Math.floor((byChords(use, low, atLow, high, atHigh, cell / 4) - low) / cell) * cell;
        double a = use.applyAsDouble(near + cell) <= 1 ? near + cell : near;
        double b = a + cell;
        for (int halving = BY_CHORDS; halving < HALVINGS; halving++) {
            double middle = (a + b) / 2;
            if (use.applyAsDouble(middle) <= 1) a = middle;
            else b = middle;
        }
        return a;
    }

    /**
     * The low end of the bracket once it is narrow enough. Each next place is where the chord crosses; an end that stays counts half the next time, so that the other end comes
     * nearer too; where three looks did not halve the bracket the next is in its middle.
     * Source: the Illinois method, any text on numerical analysis (from memory). Check: GustPartTest.
     */
    private static double byChords(
            DoubleUnaryOperator use, double low, double atLow, double high, double atHigh, double narrow) {
        double a = low;
        double b = high;
        double atA = atLow;
        double atB = atHigh;
        double wide = b - a;
        int looks = 0;
        boolean lowMoved = false;
        boolean highMoved = false;
        while (b - a > narrow) {
            double at = (atB * a - atA * b) / (atB - atA);
            boolean slow = ++looks % 3 == 0 && b - a > wide / 2;
            if (looks % 3 == 0) wide = b - a;
            if (slow || !(at > a && at < b)) at = (a + b) / 2;
            double over = use.applyAsDouble(at) - 1;
            if (over <= 0) {
                if (lowMoved) atB /= 2;
                a = at;
                atA = over;
            } else {
                if (highMoved) atA /= 2;
                b = at;
                atB = over;
            }
            lowMoved = over <= 0;
            highMoved = !lowMoved;
        }
        return a;
    }

    /** How many times the wind may grow until the allowable is reached. */
    double timesToAllowable() {
        return windAtSpeed > 0 ? Math.max(0, allowable - standing) / (ASD * windAtSpeed) : Double.MAX_VALUE;
    }

    double timesToUltimate() {
        return windAtSpeed > 0 ? Math.max(0, ultimate - standing) / windAtSpeed : Double.MAX_VALUE;
    }
}
