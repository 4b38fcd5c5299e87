package plumbleaf.engine.pricing;

import java.util.List;
import plumbleaf.engine.labour.LabourRate;
import plumbleaf.engine.takeoff.Goods;
import plumbleaf.engine.takeoff.Sold;

/**
 * What things cost: materials, hours, charges, the crew and the rules of the house.
 *
 * @param id {@code example-2027}
 */
public record PriceBook(
        String id, List<Sold> materials, List<LabourRate> labour, List<Charge> charges, Crew crew, HouseRules rules)
        implements Goods {
    public PriceBook {
        materials = List.copyOf(materials);
        labour = List.copyOf(labour);
        charges = List.copyOf(charges);
    }

    @Override
    public List<Sold> of(String item) {
        return materials.stream().filter(sold -> sold.item().equals(item)).toList();
    }
}
