package plumbleaf.engine.pricing;

import plumbleaf.engine.money.Money;

/**
 * What holds for every job of the house.
 *
 * @param minimum least price of a job; zero for none
 * @param roundTo the price goes up to the next multiple of this; one cent for none
 */
public record HouseRules(Money minimum, Money roundTo) {
    public HouseRules {
        if (roundTo.cents() < 1) throw new IllegalArgumentException("Prices round up to at least a cent");
    }
}
