package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * Every pattern that a plan of at most so much can hold. By the worths of a {@link Bound} each bar of a plan costs at least what its pieces are worth, and the
 * whole plan loses exactly its cost less the bound; so a pattern that alone loses more than that is in no such plan. Whole numbers throughout.
 */
final class PatternPool {
    private final Cutting cutting;
    private final Bound bound;
    private final int most;
    private final Effort effort;
    private final List<Column> columns = new ArrayList<>();
    private final int[] counts;
    private final double[] densityFrom;
    private final FillTable table;
    private final boolean byTable;
    private int kind;
    private long least;
    private boolean cutShort;
    private long looks;

    private PatternPool(Cutting cutting, Bound bound, Pricing pricing, int most, Effort effort) {
        this.cutting = cutting;
        this.bound = bound;
        this.most = most;
        this.effort = effort;
        this.counts = new int[cutting.sizes()];
        this.byTable = pricing.hasTable() && pricing.tableHolds(bound.worth, cutting.demand);
        this.table = byTable ? pricing.tableOf(bound.worth, cutting.demand) : FillTable.of(cutting.without());
        this.densityFrom = new double[cutting.sizes() + 1];
        for (int i = cutting.sizes() - 1; i >= 0; i--)
            densityFrom[i] = Math.max(densityFrom[i + 1], (double) bound.worth[i] / cutting.size[i]);
    }

    /** @param most patterns listed; with more the list is cut short and shows nothing */
    static PatternPool of(Cutting cutting, Bound bound, Pricing pricing, long target, int most, Effort effort) {
        PatternPool pool = new PatternPool(cutting, bound, pricing, most, effort);
        long slack = target * bound.scale - bound.scaled;
        for (int k = 0; k < cutting.kinds() && !pool.cutShort; k++) {
            if (cutting.supply[k] <= 0) continue;
            pool.kind = k;
            pool.least = cutting.price[k] * bound.scale - bound.over[k] - slack;
            pool.fill(0, cutting.room[k], 0);
        }
        return pool;
    }

    List<Column> columns() {
        return columns;
    }

    boolean cutShort() {
        return cutShort;
    }

    private void fill(int from, long room, long soFar) {
        if ((++looks & 3) == 0) effort.add(1);
        if (effort.spent() || columns.size() >= most) {
            cutShort = true;
            return;
        }
        int size = from;
        while (size < counts.length && (cutting.size[size] > room || cutting.demand[size] == 0)) size++;
        double reach = byTable ? table.best(size, room) : densityFrom[size] * room + 1;
        if (soFar + reach < least) return;
        if (size == counts.length) {
            Column column = Column.of(kind, counts);
            if (!column.isEmpty()) columns.add(column);
            return;
        }
        int times = (int) Math.min(cutting.demand[size], room / cutting.size[size]);
        for (; times >= 0 && !cutShort; times--) {
            counts[size] = times;
            fill(size + 1, room - times * cutting.size[size], soFar + times * bound.worth[size]);
        }
        counts[size] = 0;
    }
}
