package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All patterns of a kind of bar that hold a given size and have no room for another piece, and that are worth at least so much. Where pieces could move in
 * from other bars a pattern with room to spare can be left out: some full one does as well.
 */
final class FullPatterns {
    /** More are not listed; the search then cannot show that nothing fits. */
    private static final int MOST = 20_000;

    private final Cutting cutting;
    private final int[] demand;
    private final int kind;
    private final int first;
    private final long leastWorth;
    private final long[] worth;
    private final double[] densityFrom;
    private final Effort effort;
    private final List<Column> found = new ArrayList<>();
    private final List<Long> foundWorth = new ArrayList<>();
    private final int[] counts;
    private boolean cutShort;

    FullPatterns(Cutting cutting, int[] demand, int kind, int first, long leastWorth, Bound bound, Effort effort) {
        this.cutting = cutting;
        this.demand = demand;
        this.kind = kind;
        this.first = first;
        this.leastWorth = leastWorth;
        this.worth = bound.worth;
        this.effort = effort;
        this.counts = new int[cutting.sizes()];
        this.densityFrom = new double[cutting.sizes() + 1];
        for (int i = cutting.sizes() - 1; i >= 0; i--) {
            double density = demand[i] == 0 || worth.length == 0 ? 0 : (double) worth[i] / cutting.size[i];
            densityFrom[i] = Math.max(densityFrom[i + 1], density);
        }
    }

    /** Most worth first. */
    List<Column> list() {
        fill(first, cutting.room[kind], 0);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) order.add(i);
        order.sort(Comparator.<Integer, Long>comparing(i -> -foundWorth.get(i)).thenComparing(i -> i));
        return order.stream().map(found::get).toList();
    }

    /** Whether {@link #list} left any out for want of steps or room. */
    boolean cutShort() {
        return cutShort;
    }

    private void fill(int from, long room, long soFar) {
        effort.add(1);
        if (effort.spent() || found.size() >= MOST) {
            cutShort = true;
            return;
        }
        if (worth.length > 0 && soFar + densityFrom[from] * room < leastWorth - 1.0) return;
        int size = from;
        while (size < cutting.sizes() && (demand[size] == 0 || cutting.size[size] > room)) size++;
        if (size == cutting.sizes()) {
            keep(room, soFar);
            return;
        }
        int least = size == first && from == first ? 1 : 0;
        int most = (int) Math.min(demand[size], room / cutting.size[size]);
        long each = worth.length == 0 ? 0 : worth[size];
        for (int times = most; times >= least; times--) {
            counts[size] = times;
            fill(size + 1, room - times * cutting.size[size], soFar + times * each);
        }
        counts[size] = 0;
    }

    private void keep(long room, long soFar) {
        for (int i = first; i < cutting.sizes(); i++) {
            if (counts[i] < demand[i] && cutting.size[i] <= room) return;
        }
        if (worth.length > 0 && soFar < leastWorth) return;
        found.add(Column.of(kind, counts));
        foundWorth.add(soFar);
    }
}
