package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Force;

/**
 * What is bought from one supplier.
 *
 * @param supplier empty where none is named
 * @param lines in the order of the take-off; what lies in the yard is not among them
 */
public record Supplied(String supplier, List<TakeoffLine> lines) {
    public Supplied {
        lines = List.copyOf(lines);
    }

    /** Every supplier with something to deliver, in the order of the take-off. */
    public static List<Supplied> of(Takeoff takeoff) {
        Map<String, List<TakeoffLine>> suppliers = new LinkedHashMap<>();
        for (TakeoffLine line : takeoff.lines())
            if (line.units() > 0)
                suppliers
                        .computeIfAbsent(line.sold().supplier(), key -> new ArrayList<>())
                        .add(line);
        List<Supplied> all = new ArrayList<>();
        suppliers.forEach((supplier, lines) -> all.add(new Supplied(supplier, lines)));
        return List.copyOf(all);
    }

    /** On the truck, all of it together. */
    public Force weight() {
        Force weight = Force.ZERO;
        for (TakeoffLine line : lines) weight = weight.plus(line.weight());
        return weight;
    }

    public Money cost() {
        Money cost = Money.ZERO;
        for (TakeoffLine line : lines) cost = cost.plus(line.cost());
        return cost;
    }
}
