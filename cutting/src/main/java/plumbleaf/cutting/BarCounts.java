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
    /** Where there are thousands of pieces the counts are without number: then the list is given up, and the plan says how far it is proven. */
    private static final long MOST_LOOKS = 2_000_000;

    /** Of the quotient of price and fill, on the safe side. */
    private static final double ROUNDING = 1e-9;

    private final Cutting cutting;
    private final long[] fill;
    private final long least;
    private final long below;
    private final List<Counted> found = new ArrayList<>();
    private final int[] bars;
    private final int pieces;
    private final long volume;
    /** Least price of an inch's worth that this kind of bar or a later one can hold: what cannot be had for less is not looked at. */
    private final double[] rate;

    private long looks;
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
                    .atMost();
        this.rate = new double[cutting.kinds() + 1];
        rate[cutting.kinds()] = Double.MAX_VALUE;
        for (int k = cutting.kinds() - 1; k >= 0; k--)
            rate[k] = Math.min(
                    rate[k + 1], fill[k] > 0 ? (double) cutting.price[k] / fill[k] * (1 - ROUNDING) : Double.MAX_VALUE);
    }

    /** Whether what is still to be held costs too much, however the later kinds are counted. */
    private boolean tooDear(int kind, long cost, long held) {
        if (held >= volume) return false;
        return kind == bars.length || cost + Math.floor((volume - held) * rate[kind]) >= below;
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
        if (++looks > MOST_LOOKS) cutShort = true;
        if (cutShort || cost >= below || tooDear(kind, cost, held)) return;
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
