package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The patterns most worth cutting at given worths, exactly the best for each kind of bar, and some others that are good. */
final class Pricing {
    /** Good patterns beside the best, each with another longest piece. */
    private static final int OTHERS = 8;

    /** Sums of worths stay below 2^31. */
    private static final double MOST_WORTH = 1.9e9;

    private final Cutting cutting;
    private final Effort effort;
    private final boolean byTable;
    private final FillTable table;
    private final long dearest;

    Pricing(Cutting cutting, Effort effort) {
        this.cutting = cutting;
        this.effort = effort;
        this.byTable = FillTable.suits(cutting);
        this.table = FillTable.of(byTable ? cutting : cutting.without());
        this.dearest = cutting.dearest();
    }

    /** What came out of it: worths as whole numbers, the most worth by kind, and patterns found. */
    static final class Found {
        final long[] worth;
        final long[] best;
        final long scale;
        final List<Column> columns;

        Found(long[] worth, long[] best, long scale, List<Column> columns) {
            this.worth = worth;
            this.best = best;
            this.scale = scale;
            this.columns = List.copyOf(columns);
        }
    }

    /** @param dual worth of a piece of each size, the dearest bar being 1 */
    Found at(double[] dual, int[] demand, int[] supply) {
        long scale = Math.max(1, 1_000_000_000L / dearest);
        boolean table = byTable;
        if (table) {
            double most = fractional(dual, demand) * dearest;
            if (most * scale > MOST_WORTH) scale = (long) (MOST_WORTH / most);
            if (scale < 1) {
                scale = 1;
                table = false;
            }
        }
        long[] worth = new long[dual.length];
        for (int i = 0; i < worth.length; i++)
            worth[i] = demand[i] <= 0 ? 0 : (long) Math.min(Math.max(0, dual[i]) * dearest * scale, 4e15);
        long[] best = new long[cutting.kinds()];
        List<Column> columns =
                table ? byTable(worth, demand, supply, best, scale) : byList(worth, demand, supply, best, scale);
        return new Found(worth, best, scale, columns);
    }

    private List<Column> byList(long[] worth, int[] demand, int[] supply, long[] best, long scale) {
        List<Column> columns = new ArrayList<>();
        for (int k = 0; k < best.length; k++) {
            best[k] = Bound.ANY;
            if (supply[k] <= 0) continue;
            long price = cutting.price[k] * scale;
            List<Knapsack.Fill> fills =
                    Knapsack.several(cutting.size, worth, demand, cutting.room[k], price, OTHERS, effort);
            best[k] = fills.get(0).atMost();
            for (Knapsack.Fill fill : fills) columns.add(Column.of(new Pattern(k, fill.counts())));
        }
        return columns;
    }

    private List<Column> byTable(long[] worth, int[] demand, int[] supply, long[] best, long scale) {
        table.fill(worth, demand, effort);
        List<Column> columns = new ArrayList<>();
        for (int k = 0; k < best.length; k++) {
            best[k] = table.best(0, cutting.room[k]);
            if (supply[k] <= 0) continue;
            int[] counts = new int[cutting.sizes()];
            table.trace(0, cutting.room[k], counts);
            columns.add(Column.of(k, counts));
            others(k, cutting.price[k] * scale, columns);
        }
        return columns;
    }

    private void others(int kind, long price, List<Column> columns) {
        long room = cutting.room[kind];
        record Start(int size, long worth) {}
        List<Start> starts = new ArrayList<>();
        for (int i = 0; i < cutting.sizes(); i++) {
            if (table.worth(i) <= 0 || table.most(i) <= 0 || cutting.size[i] > room) continue;
            long worth = (long) table.worth(i) + table.best(i + 1, room - cutting.size[i]);
            if (worth > price) starts.add(new Start(i, worth));
        }
        starts.sort(Comparator.comparingLong(Start::worth).reversed());
        for (int n = 0; n < Math.min(OTHERS, starts.size()); n++) {
            int first = starts.get(n).size();
            int[] counts = new int[cutting.sizes()];
            counts[first] = 1;
            table.trace(first + 1, room - cutting.size[first], counts);
            columns.add(Column.of(kind, counts));
        }
    }

    /** The most worth of fractions of pieces in the widest bar: an upper limit for any sum in the table. */
    private double fractional(double[] dual, int[] demand) {
        long left = cutting.widest();
        int[] order = IntStream.range(0, dual.length)
                .filter(i -> dual[i] > 0 && demand[i] > 0)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(i -> -dual[i] / cutting.size[i])
                        .thenComparing(i -> i))
                .mapToInt(i -> i)
                .toArray();
        double worth = 0;
        for (int i : order) {
            double times = Math.min(demand[i], (double) left / cutting.size[i]);
            worth += times * dual[i];
            left -= (long) Math.ceil(times * cutting.size[i]);
            if (left <= 0) break;
        }
        return worth;
    }

    /** A table of these worths, where the bars are short enough for one; for {@link PatternPool}. */
    FillTable tableOf(long[] worth, int[] demand) {
        table.fill(worth, demand, effort);
        return table;
    }

    /** Whether what goes into a bar at these worths comes to no more than the table takes. */
    boolean tableHolds(long[] worth, int[] demand) {
        return fractional(Arrays.stream(worth).asDoubleStream().toArray(), demand) <= MOST_WORTH;
    }

    boolean hasTable() {
        return byTable;
    }
}
