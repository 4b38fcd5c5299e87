package plumbleaf.engine.pricing;

import plumbleaf.engine.money.UnitPrice;

/**
 * Something that costs money and is neither bought nor worked: equipment by the day, disposal by the ton, a permit by the job.
 *
 * @param per what it is counted in
 */
public record Charge(
        String id, String name, Category category, ChargePer per, UnitPrice price, boolean taxed, String source) {
    /** The same at another price. */
    Charge at(UnitPrice other) {
        return new Charge(id, name, category, per, other, taxed, source);
    }
}
