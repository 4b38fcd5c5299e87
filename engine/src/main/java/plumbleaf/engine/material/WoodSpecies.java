package plumbleaf.engine.material;

import plumbleaf.engine.quantity.Density;

/**
 * A wood as fences use it.
 *
 * @param id {@code western_redcedar}
 * @param ovenDryGravity G on oven-dry weight and volume, as assigned for design (NDS Table 12.3.3A)
 * @param fibreSaturation moisture above which wood no longer swells
 * @param tangentialShrinkPct shrinkage across a flat-sawn face, green to oven-dry, per cent
 * @param radialShrinkPct shrinkage across a quarter-sawn face, green to oven-dry, per cent
 * @param tangentialPerPct C_T: change of width per per cent of moisture, good from 6 to 14 %
 * @param grade design values of the grade fences are bought in
 */
public record WoodSpecies(
        String id,
        String name,
        double ovenDryGravity,
        Moisture fibreSaturation,
        double tangentialShrinkPct,
        double radialShrinkPct,
        double tangentialPerPct,
        WoodGrade grade,
        String source,
        String confidence) {
    public WoodSpecies {
        if (!(ovenDryGravity > 0.1 && ovenDryGravity < 1.3))
            throw new IllegalArgumentException("Specific gravity of wood must be 0.1 to 1.3");
    }

    /**
     * Weight of a cubic foot at a moisture: {@code 62.4 [G / (1 + 0.009 G M)] (1 + M / 100)}.
     * Holds for wood without treatment salts; above fibre saturation it slightly underrates the volume, so overrates nothing.
     * Source: NDS Supplement 2018, 3.1.3 (from memory). Check: WoodDensityCheck.
     *
     * @param moisture M, per cent of the oven-dry weight
     */
    public Density densityAt(Moisture moisture) {
        double m = moisture.percent();
        return Density.pcf(62.4 * (ovenDryGravity / (1 + 0.009 * ovenDryGravity * m)) * (1 + m / 100));
    }
}
