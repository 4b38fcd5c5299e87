package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Length;

/** The widest spacing of posts at which everything asked about still passes: solved for, not looked up. */
public final class GreatestSpacing {
    /** Halvings of the range; 10 ft down to a billionth of an inch. */
    private static final int HALVINGS = 40;

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
        if (utilisation.at(most) <= 1) return most;
        double low = 0;
        double high = most.inches();
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = (low + high) / 2;
            if (utilisation.at(Length.inches(middle)) <= 1) low = middle;
            else high = middle;
        }
        return Length.inches(low);
    }
}
