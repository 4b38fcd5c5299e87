package plumbleaf.engine.pricing;

import plumbleaf.engine.money.Money;
import plumbleaf.engine.takeoff.Truck;

/**
 * What holds for every job of the house.
 *
 * @param minimum least price of a job; zero for none
 * @param roundTo the price goes up to the next multiple of this; one cent for none
 * @param truck what carries the loads
 */
public record HouseRules(Money minimum, Money roundTo, Truck truck) {
    public HouseRules {
        if (roundTo.cents() < 1) throw new IllegalArgumentException("Prices round up to at least a cent");
    }

    /** A house that says nothing of its truck. */
    public HouseRules(Money minimum, Money roundTo) {
        this(minimum, roundTo, Truck.USUAL);
    }
}
