package plumbleaf.engine.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.job.UsedMaterial;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.quantity.DecimalText;

/**
 * A thing as it was ordered and as it was used, in units of sale.
 *
 * @param item as the price book calls it
 * @param name as people say it; the item itself for one that was never ordered
 * @param unit of sale; empty for one that was never ordered
 * @param ordered by the take-off
 * @param used as written down, what went back not among it
 * @param returned of what was taken along
 * @param price of one; nothing for what was never ordered
 * @param records how often something was written down
 */
public record ItemVariance(
        String item,
        String name,
        String unit,
        double ordered,
        double used,
        double returned,
        UnitPrice price,
        int records) {
    /** Units used beyond what was ordered; below zero where some is left. {@code used - ordered}; says nothing before anything is written down. */
    public double over() {
        return records == 0 ? 0 : used - ordered;
    }

    /** What the units beyond the order come to, to the cent; below zero for what is left. */
    public Money worth() {
        return price.times(new BigDecimal(DecimalText.shortest(over())));
    }

    /** The order against what was written down, item by item: those ordered first, in their order, then those that nobody had thought of. */
    public static List<ItemVariance> of(Takeoff order, List<UsedMaterial> used) {
        Map<String, ItemVariance> byItem = new LinkedHashMap<>();
        for (TakeoffLine line : order.lines())
            byItem.merge(
                    line.item(),
                    new ItemVariance(
                            line.item(),
                            line.sold().name(),
                            line.sold().unit().key(),
                            (double) line.units(),
                            0,
                            0,
                            line.sold().price(),
                            0),
                    ItemVariance::plus);
        for (UsedMaterial each : used)
            byItem.merge(
                    each.item(),
                    new ItemVariance(
                            each.item(),
                            each.item(),
                            "",
                            0,
                            each.units() - each.returned(),
                            each.returned(),
                            UnitPrice.of("0"),
                            1),
                    ItemVariance::plus);
        return new ArrayList<>(byItem.values());
    }

    private ItemVariance plus(ItemVariance more) {
        return new ItemVariance(
                item,
                name,
                unit,
                ordered + more.ordered,
                used + more.used,
                returned + more.returned,
                price,
                records + more.records);
    }
}
