package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/**
 * Lateral strength of one dowel in single shear: the least of the six ways it can yield.
 * Source: NDS 2018 Table 12.3.1A and 12.3.1B. Check: YieldModesCheck (MX25 to MX33).
 *
 * @param diameter D in the equations: full for a bolt, root for screws and lags
 * @param nominal nominal diameter, which picks the reduction
 * @param bendingYield Fyb
 * @param mainLength lm
 * @param mainBearing Fem
 * @param sideLength ls
 * @param sideBearing Fes
 * @param toGrainDeg largest angle between load and grain, 0 to 90
 */
public record YieldModes(
        Length diameter,
        Length nominal,
        Stress bendingYield,
        Length mainLength,
        Stress mainBearing,
        Length sideLength,
        Stress sideBearing,
        double toGrainDeg) {

    /** NDS 2018 Table 12.3.1B: where the reduction changes its rule. */
    private static final double QUARTER_IN = 0.25;

    /** One way to yield, with the reference value it gives. */
    public record Mode(String name, Force value) {}

    /** The mode that governs. */
    public Mode governing() {
        double d = diameter.inches();
        double lm = mainLength.inches();
        double ls = sideLength.inches();
        double fem = mainBearing.psi();
        double fes = sideBearing.psi();
        double re = fem / fes;
        double rt = lm / ls;
        double k1 =
                (Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) / (1 + re);
        double bend = 2 * bendingYield.psi() * d * d;
        double k2 = -1 + Math.sqrt(2 * (1 + re) + bend * (1 + 2 * re) / (3 * fem * lm * lm));
        double k3 = -1 + Math.sqrt(2 * (1 + re) / re + bend * (2 + re) / (3 * fem * ls * ls));
        Mode least = mode("Im", d * lm * fem / reduction(4));
        least = lesser(least, mode("Is", d * ls * fes / reduction(4)));
        least = lesser(least, mode("II", k1 * d * ls * fes / reduction(3.6)));
        least = lesser(least, mode("IIIm", k2 * d * lm * fem / ((1 + 2 * re) * reduction(3.2))));
        least = lesser(least, mode("IIIs", k3 * d * ls * fem / ((2 + re) * reduction(3.2))));
        double both = d * d / reduction(3.2) * Math.sqrt(2 * fem * bendingYield.psi() / (3 * (1 + re)));
        return lesser(least, mode("IV", both));
    }

    /** Rd: below a quarter inch 2.2 to 3 by the diameter in the equations, above by mode; from a nominal quarter inch more for the angle to the grain. */
    double reduction(double large) {
        double d = diameter.inches();
        double angle = nominal.inches() >= QUARTER_IN ? 1 + 0.25 * toGrainDeg / 90 : 1;
        if (d >= QUARTER_IN) return large * angle;
        return (d <= 0.17 ? 2.2 : 10 * d + 0.5) * angle;
    }

    private static Mode mode(String name, double pounds) {
        return new Mode(name, Force.pounds(pounds));
    }

    private static Mode lesser(Mode one, Mode other) {
        return other.value().compareTo(one.value()) < 0 ? other : one;
    }

    /**
     * A lag pulled at an angle: {@code Wp Z / (Wp cos2 + Z sin2)}, angle from the face of the wood.
     * Source: NDS 2018 Equation 12.4-1. Check: YieldModesCheck (MX34).
     */
    public static Force combined(Force withdrawal, Force lateral, double angleDeg) {
        double sine = StrictMath.sin(StrictMath.toRadians(angleDeg));
        double cosine = StrictMath.cos(StrictMath.toRadians(angleDeg));
        double w = withdrawal.pounds();
        double z = lateral.pounds();
        return Force.pounds(w * z / (w * cosine * cosine + z * sine * sine));
    }
}
