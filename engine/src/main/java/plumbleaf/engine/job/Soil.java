package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.SoilRate;

/**
 * The ground as picked on site.
 *
 * @param state how dense or firm it is, as likely as the pick is
 * @param belowWater whether ground water stands in the hole
 * @param ibcClass class of IBC Table 1806.2, 1 to 5
 * @param rate n_h, where someone gave a number instead of a pick
 * @param looseTop how much of the top counts for nothing (bed, fill, cracked clay)
 * @param slope how steeply the ground falls across the post, as a positive grade; level is zero
 * @param numbers what somebody measured or vouches for
 */
public record Soil(
        SoilKind kind,
        SoilState state,
        boolean belowWater,
        int ibcClass,
        Stated<SoilRate> rate,
        Length looseTop,
        Slope slope,
        SoilNumbers numbers) {
    public Soil(
            SoilKind kind,
            SoilState state,
            boolean belowWater,
            int ibcClass,
            Stated<SoilRate> rate,
            Length looseTop,
            Slope slope) {
        this(kind, state, belowWater, ibcClass, rate, looseTop, slope, SoilNumbers.NONE);
    }

    public Soil {
        if (ibcClass < 1 || ibcClass > 5)
            throw new IllegalArgumentException("IBC soil class must be 1 to 5, was " + ibcClass);
    }

    /** The same ground beside a wall or trench of that height, or of the higher one that it was said to be beside. */
    public Soil beside(Length drop) {
        return drop.compareTo(numbers.besideDrop()) <= 0
                ? this
                : new Soil(kind, state, belowWater, ibcClass, rate, looseTop, slope, numbers.beside(drop));
    }

    /** Down to here the ground holds nothing: its loose top, or the height of a wall or trench beside it. */
    public Length deadTop() {
        return looseTop.compareTo(numbers.besideDrop()) > 0 ? looseTop : numbers.besideDrop();
    }
}
