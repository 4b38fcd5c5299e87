package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Slope;

/** Passive resistance where the ground falls away in the direction of the push. */
public final class FallingGround {
    private FallingGround() {}

    /**
     * Coulomb's passive coefficient for a smooth upright wall and ground falling at b:
     * {@code Kp = cos2(f) / [1 - sqrt(sin(f) sin(f - b) / cos(b))]2}. Good for b below f.
     * Source: Coulomb passive formula as printed after NAVFAC DM 7.02. Check: FallingGroundCheck (CX25 to CX27).
     *
     * @param fall how steeply the ground falls, zero or more
     * @param frictionDeg f, degrees
     */
    public static double passive(Slope fall, double frictionDeg) {
        double f = StrictMath.toRadians(frictionDeg);
        double b = StrictMath.atan(fall.ratio());
        double root = StrictMath.sqrt(StrictMath.sin(f) * Math.max(0, StrictMath.sin(f - b)) / StrictMath.cos(b));
        double cos = StrictMath.cos(f);
        return cos * cos / ((1 - root) * (1 - root));
    }

    /** The share of level-ground resistance that is left; zero where the ground falls as steeply as it can stand. */
    public static double factor(Slope fall, double frictionDeg) {
        if (fall.ratio() <= 0) return 1;
        if (StrictMath.atan(fall.ratio()) >= StrictMath.toRadians(frictionDeg)) return 0;
        return passive(fall, frictionDeg) / passive(Slope.ZERO, frictionDeg);
    }
}
