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
        if (use.applyAsDouble(0) > 1) return 0;
        double low = 0;
        double high = 1;
        while (use.applyAsDouble(high) <= 1 && high < NEVER) {
            low = high;
            high *= 2;
        }
        if (high >= NEVER) return NEVER;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (use.applyAsDouble(middle) <= 1) low = middle;
            else high = middle;
        }
        return low;
    }

    /** How many times the wind may grow until the allowable is reached. */
    double timesToAllowable() {
        return windAtSpeed > 0 ? Math.max(0, allowable - standing) / (ASD * windAtSpeed) : Double.MAX_VALUE;
    }

    double timesToUltimate() {
        return windAtSpeed > 0 ? Math.max(0, ultimate - standing) / windAtSpeed : Double.MAX_VALUE;
    }
}
