package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * Reference withdrawal of one fastener from side grain, per inch of penetration.
 * Source: NDS 2018 12.2. Check: WithdrawalCheck (MX17 to MX22).
 */
public final class Withdrawal {
    private Withdrawal() {}

    /** Smooth nail: {@code 1380 G^2.5 D}. Source: NDS 2018 Equation 12.2-3. */
    public static Force nailPerInch(double gravity, Length diameter) {
        return Force.pounds(1380 * gravity * gravity * Math.sqrt(gravity) * diameter.inches());
    }

    /** Wood screw: {@code 2850 G2 D}. Source: NDS 2018 Equation 12.2-2. */
    public static Force screwPerInch(double gravity, Length diameter) {
        return Force.pounds(2850 * gravity * gravity * diameter.inches());
    }

    /** Lag screw: {@code 1800 G^1.5 D^0.75}, the thread less its tip. Source: NDS 2018 Equation 12.2-1. */
    public static Force lagPerInch(double gravity, Length diameter) {
        return Force.pounds(1800 * gravity * Math.sqrt(gravity) * StrictMath.pow(diameter.inches(), 0.75));
    }

    /**
     * What a fastener may carry: {@code W p CD CM}.
     *
     * @param penetration into the main member, threads alone for lags
     * @param duration CD, 1.6 for wind (NDS 2018 2.3.2)
     * @param wet CM, 1; 0.25 for nails driven green that dry, or that go wet and dry (NDS 2018 Table 11.3.3, from memory)
     */
    public static Force allowed(Force perInch, Length penetration, double duration, double wet) {
        return perInch.times(penetration.inches() * duration * wet);
    }
}
