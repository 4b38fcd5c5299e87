package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** A first plan without much thought: the bar that costs least for what it holds, filled as full as it goes, again and again. */
final class OneByOne {
    /** With more sizes than this the fullest bar is a search of its own; then the longest that still fits goes next. */
    private static final int MANY_SIZES = 120;

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
            Knapsack.Fill fill = cutting.sizes() > MANY_SIZES
                    ? longestFirst(cutting, demand, cutting.room[k], effort)
                    : Knapsack.best(cutting.size, cutting.size, demand, cutting.room[k], effort);
            if (fill.worth() == 0) continue;
            double each = (double) cutting.price[k] / fill.worth();
            if (each < least) {
                least = each;
                best = Column.of(new Pattern(k, fill.counts()));
            }
        }
        return best;
    }

    private static Knapsack.Fill longestFirst(Cutting cutting, int[] demand, long room, Effort effort) {
        List<Integer> byLength = IntStream.range(0, cutting.sizes())
                .boxed()
                .sorted(Comparator.comparing((Integer size) -> -cutting.size[size])
                        .thenComparing(size -> size))
                .toList();
        int[] counts = new int[cutting.sizes()];
        long left = room;
        for (int size : byLength) {
            counts[size] = (int) Math.min(demand[size], left / cutting.size[size]);
            left -= counts[size] * cutting.size[size];
        }
        effort.add(cutting.sizes());
        return new Knapsack.Fill(Arrays.stream(counts).boxed().toList(), room - left);
    }
}
