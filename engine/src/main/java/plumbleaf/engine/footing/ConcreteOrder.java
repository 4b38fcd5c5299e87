package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Volume;

/**
 * Concrete for a whole job: bags are rounded up once, here, never hole by hole. Check: PourCheck (MX36, MX37).
 *
 * @param placed volume with waste
 * @param bagsExactly before rounding
 * @param bags to buy
 * @param mixWeight what the truck carries
 * @param waterGallons for all bags
 * @param readyMix cubic yards, should a truck be cheaper
 */
public record ConcreteOrder(
        Volume placed, double bagsExactly, int bags, Force mixWeight, double waterGallons, double readyMix) {
    /** A hair over a whole bag, from rounding in the last digit, is not another bag. Share of a bag. */
    private static final double HAIR = 1e-9;
    /** Quarts in a gallon. */
    private static final double QUARTS = 4;

    /**
     * @param net all holes together, posts taken out
     * @param waste share lost, 0.1 for 10 %
     */
    public static ConcreteOrder of(Volume net, double waste, BagSize bag) {
        Volume placed = net.times(1 + waste);
        double exactly = placed.cubicFeet() / bag.yield().cubicFeet();
        int bags = (int) Math.ceil(exactly - HAIR);
        return new ConcreteOrder(
                placed,
                exactly,
                bags,
                bag.weight().times(bags),
                bags * bag.waterQuarts() / QUARTS,
                placed.inCubicYards());
    }
}
