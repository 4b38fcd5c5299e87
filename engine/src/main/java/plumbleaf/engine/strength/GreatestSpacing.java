package plumbleaf.engine.strength;

import plumbleaf.engine.geometry.Crossing;
import plumbleaf.engine.quantity.Length;

/** The widest spacing of posts at which everything asked about still passes: solved for, not looked up. Check: PostSpacingCheck, PostCheckTest. */
public final class GreatestSpacing {
    /** How near the answer is found: 10 ft down to a ten-billionth of an inch. */
    private static final double NEAR = 1.0 / (1L << 40);

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
        double atMost = utilisation.at(most) - 1;
        if (atMost <= 0) return most;
        double atNone = utilisation.at(Length.ZERO) - 1;
        if (atNone > 0) return Length.ZERO;
        double mostIn = most.inches();
        Crossing over = Crossing.of(
                spacing -> utilisation.at(Length.inches(spacing)) - 1, 0, atNone, mostIn, atMost, NEAR * mostIn);
        return Length.inches(over.below());
    }
}
