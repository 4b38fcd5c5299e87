package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.List;

/** A first plan without much thought: the bar that costs least for what it holds, filled as full as it goes, again and again. */
final class OneByOne {
    private OneByOne() {}

    /** One pattern a bar; empty when the bars at hand run out. */
    static List<Column> fill(Cutting cutting, Effort effort) {
        int[] demand = cutting.demand.clone();
        int[] supply = cutting.supply.clone();
        List<Column> bars = new ArrayList<>();
        int left = cutting.pieces();
        while (left > 0) {
            Column best = cheapest(cutting, demand, supply, effort);
            if (best.isEmpty()) return List.of();
            best.takeFrom(demand);
            if (supply[best.kind] != Cutting.UNLIMITED) supply[best.kind]--;
            bars.add(best);
            for (int count : best.times) left -= count;
        }
        return bars;
    }

    private static Column cheapest(Cutting cutting, int[] demand, int[] supply, Effort effort) {
        Column best = Column.of(0, new int[cutting.sizes()]);
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < cutting.kinds(); k++) {
            if (supply[k] <= 0) continue;
            Knapsack.Fill fill = Knapsack.best(cutting.size, cutting.size, demand, cutting.room[k], effort);
            if (fill.worth() == 0) continue;
            double each = (double) cutting.price[k] / fill.worth();
            if (each < least) {
                least = each;
                best = Column.of(new Pattern(k, fill.counts()));
            }
        }
        return best;
    }
}
