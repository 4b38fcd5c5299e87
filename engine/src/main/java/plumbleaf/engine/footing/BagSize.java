package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Volume;

/**
 * A bag of concrete mix. Yields: bag labels (0.60 ft3 for 80 lb), others in proportion.
 *
 * @param waterQuarts water it takes, about 3 quarts for 80 lb (common practice, no source)
 */
public record BagSize(Force weight, Volume yield, double waterQuarts) {
    public static final BagSize EIGHTY_POUND = new BagSize(Force.pounds(80), Volume.cubicFeet(0.60), 3);
    public static final BagSize SIXTY_POUND = new BagSize(Force.pounds(60), Volume.cubicFeet(0.45), 2.25);
    public static final BagSize FIFTY_POUND = new BagSize(Force.pounds(50), Volume.cubicFeet(0.375), 1.875);
}
