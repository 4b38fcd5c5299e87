package plumbleaf.engine.pricing;

import java.util.List;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;

/**
 * One line of direct cost.
 *
 * @param quantity in {@code unit}
 * @param amount quantity times price, to the cent
 * @param causes ids of the parts it is for
 */
public record PriceLine(
        Category category,
        String item,
        String name,
        double quantity,
        String unit,
        UnitPrice price,
        Money amount,
        boolean taxed,
        List<String> causes) {
    public PriceLine {
        causes = List.copyOf(causes);
    }
}
