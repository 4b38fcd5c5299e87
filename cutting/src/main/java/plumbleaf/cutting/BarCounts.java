package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The sets of bars worth asking about: cost between a bound and a known plan, and enough room by volume. Bars that cost nothing are always all there. With mixed
 * prices the cost of a set jumps, so the least possible cost is settled here, before any pattern is looked at.
 */
final class BarCounts {
    private static final int MOST = 200_000;

    private final Cutting cutting;
    private final long[] fill;
    private final long least;
    private final long below;
    private final List<Counted> found = new ArrayList<>();
    private final int[] bars;
    private final int pieces;
    private final long volume;
    private boolean cutShort;

    private BarCounts(Cutting cutting, long least, long below, Effort effort) {
        this.cutting = cutting;
        this.least = least;
        this.below = below;
        this.bars = new int[cutting.kinds()];
        this.pieces = cutting.pieces();
        this.volume = cutting.volume();
        this.fill = new long[cutting.kinds()];
        for (int k = 0; k < fill.length; k++)
            fill[k] = Knapsack.best(cutting.size, cutting.size, cutting.demand, cutting.room[k], effort)
                    .worth();
    }

    /** A set of bars and its cost. */
    record Counted(List<Integer> bars, long cost) {
        Counted {
            bars = List.copyOf(bars);
        }

        int[] asArray() {
            return bars.stream().mapToInt(Integer::intValue).toArray();
        }
    }

    /** @param complete false when there were too many to list; then the list stops at some cost and nothing beyond it is settled */
    record Listed(List<Counted> sets, boolean complete) {
        Listed {
            sets = List.copyOf(sets);
        }
    }

    /** Cheapest first. */
    static Listed between(Cutting cutting, long least, long below, Effort effort) {
        BarCounts counts = new BarCounts(cutting, least, below, effort);
        counts.choose(0, 0, 0);
        counts.found.sort(Comparator.comparingLong(Counted::cost)
                .thenComparing(counted ->
                        counted.bars().stream().mapToInt(Integer::intValue).sum())
                .thenComparing(counted -> counted.bars().toString()));
        return new Listed(counts.found, !counts.cutShort);
    }

    private void choose(int kind, long cost, long held) {
        if (cutShort || cost >= below) return;
        if (kind == bars.length) {
            if (cost < least || held < volume) return;
            if (found.size() >= MOST) cutShort = true;
            List<Integer> chosen = new ArrayList<>();
            for (int each : bars) chosen.add(each);
            found.add(new Counted(chosen, cost));
            return;
        }
        int most = Math.min(cutting.supply[kind], pieces);
        long price = cutting.price[kind];
        if (price == 0) {
            bars[kind] = most;
            choose(kind + 1, cost, held + fill[kind] * most);
            return;
        }
        for (int times = 0; times <= most && cost + times * price < below; times++) {
            bars[kind] = times;
            choose(kind + 1, cost + times * price, held + fill[kind] * times);
        }
        bars[kind] = 0;
    }
}
