package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Density;
import plumbleaf.engine.quantity.Length;

/**
 * How deep one kind of soil freezes in a winter, where no authority states a depth. For planning only: mark it as not verified with the authority.
 * Source: modified Berggren, UFC 3-130-06 and TM 5-852-6, with the closed form of lambda. Check: FrostPenetrationCheck (MX40 to MX42).
 *
 * @param dryWeight of the soil
 * @param waterPct water over dry soil, per cent
 * @param frozenConductivity Btu/hr ft F
 * @param unfrozenConductivity Btu/hr ft F
 */
public record FrostPenetration(
        Density dryWeight, double waterPct, double frozenConductivity, double unfrozenConductivity) {
    /**
     * One winter at one place.
     *
     * @param meanAnnualF mean air temperature of the year, degrees F
     * @param surfaceIndex n times the air freezing index, degree-days F
     * @param days length of the freezing season
     */
    public record Winter(double meanAnnualF, double surfaceIndex, double days) {}

    /** {@code L = 144 g w / 100}, Btu per cubic foot. */
    public double latentHeat() {
        return 144 * dryWeight.pcf() * waterPct / 100;
    }

    /** {@code C = g (0.17 + 0.75 w / 100)}, Btu per cubic foot and degree. */
    public double heatCapacity() {
        return dryWeight.pcf() * (0.17 + 0.75 * waterPct / 100);
    }

    /** {@code lambda = 1 / sqrt(1 + mu (a + 0.5)), mu = vs C / L, a = vo / vs}; 1 would be the Stefan bound. */
    public double lambda(Winter winter) {
        double vs = winter.surfaceIndex() / winter.days();
        double a = Math.abs(winter.meanAnnualF() - 32) / vs;
        double mu = vs * heatCapacity() / latentHeat();
        return 1 / Math.sqrt(1 + mu * (a + 0.5));
    }

    /** {@code X = lambda sqrt(48 k nF / L)} feet, k the mean of frozen and unfrozen. */
    public Length depth(Winter winter) {
        return depth(winter, lambda(winter));
    }

    /** The same with lambda read from a chart. */
    public Length depth(Winter winter, double lambda) {
        double k = (frozenConductivity + unfrozenConductivity) / 2;
        return Length.feet(lambda * Math.sqrt(48 * k * winter.surfaceIndex() / latentHeat()));
    }

    /** Silt or clay with its conductivities by Kersten's fit, for 7 % water or more. Source: Kersten 1949 (from memory). Check: MX43. */
    public static FrostPenetration siltOrClay(Density dryWeight, double waterPct) {
        double g = dryWeight.pcf();
        double unfrozen = (0.9 * StrictMath.log10(waterPct) - 0.2) * StrictMath.pow(10, 0.01 * g) / 12;
        double frozen = (0.01 * StrictMath.pow(10, 0.022 * g) + 0.085 * StrictMath.pow(10, 0.008 * g) * waterPct) / 12;
        return new FrostPenetration(dryWeight, waterPct, frozen, unfrozen);
    }

    /** Sand with its conductivities by Kersten's fit. Source: Kersten 1949 (from memory). Check: MX44. */
    public static FrostPenetration sand(Density dryWeight, double waterPct) {
        double g = dryWeight.pcf();
        double unfrozen = (0.7 * StrictMath.log10(waterPct) + 0.4) * StrictMath.pow(10, 0.01 * g) / 12;
        double frozen =
                (0.076 * StrictMath.pow(10, 0.013 * g) + 0.032 * StrictMath.pow(10, 0.0146 * g) * waterPct) / 12;
        return new FrostPenetration(dryWeight, waterPct, frozen, unfrozen);
    }
}
