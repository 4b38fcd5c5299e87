package plumbleaf.engine.takeoff;

import plumbleaf.engine.quantity.Area;

/**
 * A finish by coverage.
 *
 * @param coats one or two
 * @param firstFt2PerGallon coverage of the first coat, on this texture
 * @param secondFt2PerGallon coverage of the second
 * @param loss share that ends on the ground and in the brush; it is the waste, so the price book adds none
 */
public record Coating(int coats, double firstFt2PerGallon, double secondFt2PerGallon, double loss) {
    public Coating {
        if (coats < 1 || coats > 2) throw new IllegalArgumentException("One or two coats, not " + coats);
    }

    /**
     * Gallons: {@code A sides (1 / c1 + 1 / c2) (1 + loss)}, the second term for a second coat.
     * Source: coverage by texture, USDA Wood Handbook chapter 16 (100 to 200 ft2 rough, 200 to 400 smooth). Check: TakeoffCheck (MX38, MX39).
     *
     * @param sides faces coated; the faces that overlap count too, they are coated before assembly
     */
    public double gallons(Area area, int sides) {
        double ft2 = area.inSquareFeet() * sides;
        double net = ft2 / firstFt2PerGallon + (coats == 2 ? ft2 / secondFt2PerGallon : 0);
        return net * (1 + loss);
    }
}
