package plumbleaf.engine.pricing;

import java.util.List;
import plumbleaf.engine.labour.LabourRate;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.takeoff.Goods;
import plumbleaf.engine.takeoff.OnHand;
import plumbleaf.engine.takeoff.Sold;

/**
 * What things cost: materials, hours, charges, the crew and the rules of the house.
 *
 * @param id {@code example-2027}
 * @param onHand what lies in the yard, and is used before anything is bought
 */
public record PriceBook(
        String id,
        List<Sold> materials,
        List<LabourRate> labour,
        List<Charge> charges,
        Crew crew,
        HouseRules rules,
        OnHand onHand)
        implements Goods {
    private static final double WORKING_DAY_HOURS = 8;

    public PriceBook {
        materials = List.copyOf(materials);
        labour = List.copyOf(labour);
        charges = List.copyOf(charges);
    }

    /** A book beside an empty yard. */
    public PriceBook(
            String id,
            List<Sold> materials,
            List<LabourRate> labour,
            List<Charge> charges,
            Crew crew,
            HouseRules rules) {
        this(id, materials, labour, charges, crew, rules, OnHand.NOTHING);
    }

    public PriceBook with(OnHand yard) {
        return new PriceBook(id, materials, labour, charges, crew, rules, yard);
    }

    @Override
    public List<Sold> of(String item) {
        return materials.stream().filter(sold -> sold.item().equals(item)).toList();
    }

    /** A book of that name that nobody has: nothing in it has a price, and a design says so. */
    public static PriceBook none(String id) {
        return new PriceBook(
                id,
                List.of(),
                List.of(),
                List.of(),
                new Crew(1, UnitPrice.of("0"), WORKING_DAY_HOURS, 0),
                new HouseRules(Money.ZERO, Money.cents(1)));
    }

    public boolean isEmpty() {
        return materials.isEmpty() && labour.isEmpty() && charges.isEmpty();
    }
}
