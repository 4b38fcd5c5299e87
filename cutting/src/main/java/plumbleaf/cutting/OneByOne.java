package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A first plan without much thought: the bar that costs least for what it holds, filled as full as it goes, again and again. Where sizes are many or fine, the
 * fullest bar is a search of its own: then each bar takes the longest piece left, and what fills the rest best of some thousand tries.
 * Source of the second way: J. N. D. Gupta and J. C. Ho, Production Planning and Control 10 (1999) 598-603, with K. Fleszar and K. S. Hindi's fixed first piece.
 */
final class OneByOne {
    /** With more sizes than this the longest goes first. */
    private static final int MANY_SIZES = 120;

    /** Sizes too fine for a table. */
    private static final int MANY_FINE_SIZES = 30;

    private static final int TRIES_A_BAR = 4_000;

    /** Where the last two pieces are looked for together, a try is as many looks as there are sizes. */
    private static final int TRIES_WITH_PAIRS = 100;

    /** A bar with less than this part of it left is full enough. */
    private static final long FULL = 20_000;

    private final Cutting cutting;
    private final boolean byPairs;
    private final Effort effort;
    private final int[] demand;
    private final int[] now;
    private final int[] fullest;
    private long leastLeft;
    private int tries;

    private OneByOne(Cutting cutting, boolean byPairs, Effort effort) {
        this.byPairs = byPairs;
        this.cutting = cutting;
        this.effort = effort;
        this.demand = cutting.demand.clone();
        this.now = new int[demand.length];
        this.fullest = new int[demand.length];
    }

    /** One pattern a bar; empty when the bars at hand run out. */
    static List<Column> fill(Cutting cutting, Effort effort) {
        return new OneByOne(cutting, false, effort).bars();
    }

    /**
     * The longest piece first in every bar, and the last two of it together: those that fill it best. With hundreds of sizes some two leave next to nothing of a
     * bar, and short pieces are kept for the last bars.
     */
    static List<Column> fillByPairs(Cutting cutting, Effort effort) {
        return new OneByOne(cutting, true, effort).bars();
    }

    private List<Column> bars() {
        int[] supply = cutting.supply.clone();
        List<Column> bars = new ArrayList<>();
        int left = cutting.pieces();
        while (left > 0) {
            Column best = cheapest(supply);
            if (best.isEmpty()) return List.of();
            // what is left may be enough for several bars alike; pairs want many sizes to the last
            long again = byPairs ? 1 : best.timesIn(demand);
            if (supply[best.kind] != Cutting.UNLIMITED) again = Math.min(again, supply[best.kind]);
            for (long n = 0; n < again; n++) {
                best.takeFrom(demand);
                if (supply[best.kind] != Cutting.UNLIMITED) supply[best.kind]--;
                bars.add(best);
                for (int count : best.times) left -= count;
            }
        }
        return bars;
    }

    private Column cheapest(int[] supply) {
        Column best = Column.of(0, new int[cutting.sizes()]);
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < cutting.kinds(); k++) {
            if (supply[k] <= 0) continue;
            Column fill = filled(k);
            if (fill.isEmpty()) continue;
            double each = (double) cutting.price[k] / fill.used(cutting.size);
            if (each < least) {
                least = each;
                best = fill;
            }
        }
        return best;
    }

    private Column filled(int kind) {
        boolean many = byPairs
                || cutting.sizes() > MANY_SIZES
                || (cutting.sizes() > MANY_FINE_SIZES && !FillTable.suits(cutting))
                || effort.isTooFine();
        if (many) return longestAndRest(kind);
        return Column.of(new Pattern(
                kind,
                Knapsack.best(cutting.size, cutting.size, demand, cutting.room[kind], effort)
                        .counts()));
    }

    private Column longestAndRest(int kind) {
        Arrays.fill(now, 0);
        Arrays.fill(fullest, 0);
        int first = 0;
        while (first < now.length && (demand[first] == 0 || cutting.size[first] > cutting.room[kind])) first++;
        if (first == now.length) return Column.of(kind, now);
        leastLeft = Long.MAX_VALUE;
        tries = 0;
        now[first] = 1;
        rest(first, cutting.room[kind] - cutting.size[first], enough(cutting.room[kind]));
        effort.add(byPairs ? (long) tries * now.length / 8 + 1 : tries / 8 + 1);
        return Column.of(kind, fullest);
    }

    /** What may be left of a bar; by pairs no more than each bar of a plan at the bound may waste. */
    private long enough(long room) {
        if (!byPairs) return room / FULL;
        long volume = cutting.volume();
        long bars = (volume + room - 1) / room;
        return Math.min(room / FULL, (bars * room - volume) / bars);
    }

    /** Tries the sizes from this one on, long to short, as many as go before fewer; true once the bar is full enough or the tries are used up. */
    private boolean rest(int from, long left, long enough) {
        tries++;
        if (left < leastLeft) {
            leastLeft = left;
            System.arraycopy(now, 0, fullest, 0, now.length);
        }
        if (byPairs && leastLeft > enough) lastTwo(from, left);
        if (leastLeft <= enough || tries > (byPairs ? TRIES_WITH_PAIRS : TRIES_A_BAR)) return true;
        for (int size = firstWithin(from, left); size < now.length; size++) {
            if (now[size] >= demand[size] || cutting.size[size] > left) continue;
            now[size]++;
            boolean done = rest(size, left - cutting.size[size], enough);
            now[size]--;
            if (done) return true;
        }
        return false;
    }

    /** Of two more pieces those that leave least: one walk from both ends. */
    private void lastTwo(int from, long left) {
        int longer = from;
        int shorter = now.length - 1;
        while (longer <= shorter) {
            long over = left - cutting.size[longer] - cutting.size[shorter];
            boolean there = longer == shorter
                    ? now[longer] + 2 <= demand[longer]
                    : now[longer] < demand[longer] && now[shorter] < demand[shorter];
            if (over >= 0 && over < leastLeft && there) {
                leastLeft = over;
                System.arraycopy(now, 0, fullest, 0, now.length);
                fullest[longer]++;
                fullest[shorter]++;
            }
            if (over < 0 || now[longer] >= demand[longer]) longer++;
            else shorter--;
        }
    }

    /** The longest size from this one on that goes into what is left: sizes lie long to short. */
    private int firstWithin(int from, long left) {
        int low = from;
        int high = now.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (cutting.size[middle] <= left) high = middle;
            else low = middle + 1;
        }
        return low;
    }
}
