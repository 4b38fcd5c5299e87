package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/** How hard wood bears under a bolt, lag, screw or nail. Source: NDS 2018 12.3.3. Check: YieldModesCheck (MX23, MX24). */
public final class DowelBearing {
    /** The tables are rounded to this. */
    private static final double TABLE_STEP_PSI = 50;

    private DowelBearing() {}

    /** A quarter inch and more, along the grain: {@code 11200 G}. */
    public static Stress along(double gravity) {
        return Stress.psi(11_200 * gravity);
    }

    /** A quarter inch and more, across the grain: {@code 6100 G^1.45 / sqrt(D)}. */
    public static Stress across(double gravity, Length diameter) {
        return Stress.psi(6_100 * StrictMath.pow(gravity, 1.45) / Math.sqrt(diameter.inches()));
    }

    /** Below a quarter inch, any way: {@code 16600 G^1.84}. */
    public static Stress small(double gravity) {
        return Stress.psi(16_600 * StrictMath.pow(gravity, 1.84));
    }

    /** At an angle to the grain: {@code Fa Fb / (Fa sin2 + Fb cos2)}. Source: NDS 2018 Equation 12.3-11. */
    public static Stress hankinson(Stress along, Stress across, double angleDeg) {
        double sine = StrictMath.sin(StrictMath.toRadians(angleDeg));
        double cosine = StrictMath.cos(StrictMath.toRadians(angleDeg));
        return Stress.psi(along.psi() * across.psi() / (along.psi() * sine * sine + across.psi() * cosine * cosine));
    }

    /** As the printed table has it. */
    public static Stress asPrinted(Stress bearing) {
        return Stress.psi(Math.rint(bearing.psi() / TABLE_STEP_PSI) * TABLE_STEP_PSI);
    }
}
