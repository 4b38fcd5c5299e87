package plumbleaf.engine.material;

/** The moisture wood settles at in the air around it. */
public final class Equilibrium {
    private Equilibrium() {}

    /**
     * Equilibrium moisture content of wood:
     * {@code 1800/W [K H/(1 - K H) + (K1 K H + 2 K1 K2 K^2 H^2)/(1 + K1 K H + K1 K2 K^2 H^2)]} in per cent, with W, K, K1 and K2 quadratic in the
     * temperature. Holds for wood without salts, in air from about 30 to 160 degrees Fahrenheit. Source: USDA Wood Handbook FPL-GTR-190, equation
     * 4-5 and its constants (from memory). Check: EquilibriumCheck.
     *
     * @param fahrenheit T, temperature of the air
     * @param relativeHumidity H, 0 to 1
     */
    public static Moisture of(double fahrenheit, double relativeHumidity) {
        if (!(relativeHumidity >= 0 && relativeHumidity < 1))
            throw new IllegalArgumentException("Relative humidity must be 0 to below 1");
        double t = fahrenheit;
        double h = relativeHumidity;
        double w = 330 + 0.452 * t + 0.00415 * t * t;
        double k = 0.791 + 0.000463 * t - 0.000000844 * t * t;
        double k1 = 6.34 + 0.000775 * t - 0.0000935 * t * t;
        double k2 = 1.09 + 0.0284 * t - 0.0000904 * t * t;
        double kh = k * h;
        double first = kh / (1 - kh);
        double second = (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh);
        return Moisture.percent(1800 / w * (first + second));
    }
}
