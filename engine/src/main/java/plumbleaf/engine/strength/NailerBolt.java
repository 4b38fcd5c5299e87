package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/**
 * One bolt that holds a nailer to a rail of steel tube: a dowel in single shear, the wood the main member and one wall of the tube the side plate. The weight of the
 * boards pulls it square to the nailer's grain.
 */
public final class NailerBolt {
    /** Bending yield of bolts. Source: NDS 2018 Table I1. */
    private static final Stress BENDING_YIELD = Stress.psi(45_000);

    /** Thin steel under a dowel. Source: NDS 2018 Table 12K, notes; the tables of {@link YieldModes} rest on it. */
    private static final Stress STEEL_BEARING = Stress.psi(61_850);

    /** Weight lasts: NDS 2018 Table 2.3.2. */
    private static final double LASTING = 0.9;

    /** Dowels in wood that is wet in service: NDS 2018 Table 11.3.3. */
    private static final double WET = 0.7;

    /** The nearer edge that a dowel square to the grain pushes towards: NDS 2018 Table 12.5.1C. */
    private static final double LOADED_EDGE = 4;

    private NailerBolt() {}

    /**
     * What it may carry: {@code Z' = Z CD CM}, Z the least of the yield modes with {@code Fe = 6100 G^1.45 / sqrt(D)} in the wood. Holds where the edge
     * is {@link #edgeNeeded} away at least. Source: NDS 2018 Table 12.3.1A, 12.3.3, 11.3.3, 2.3.2. Check: NailerBoltTest, YieldModesCheck (MX26, MX30).
     *
     * @param gravity of the nailer's wood, on oven-dry weight and volume
     * @param wall of the tube
     */
    public static Force allowed(Length bolt, double gravity, Length nailer, Length wall) {
        Force z = modes(bolt, gravity, nailer, wall).governing().value();
        return z.times(LASTING * WET);
    }

    /** The yield mode that governs. */
    public static String mode(Length bolt, double gravity, Length nailer, Length wall) {
        return modes(bolt, gravity, nailer, wall).governing().name();
    }

    public static Length edgeNeeded(Length bolt) {
        return bolt.times(LOADED_EDGE);
    }

    private static YieldModes modes(Length bolt, double gravity, Length nailer, Length wall) {
        return new YieldModes(
                bolt, bolt, BENDING_YIELD, nailer, DowelBearing.across(gravity, bolt), wall, STEEL_BEARING, 90);
    }
}
