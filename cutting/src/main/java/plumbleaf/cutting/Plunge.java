package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Looks for a plan from the fractions at the root of a {@link PoolSearch}: down by whole patterns, several at a time. Where no plan is left below, some of the bars
 * found so far are let go, others each time, and it goes down from there again; what holds most bars is kept. It finds a plan or nothing, and proves nothing. All is
 * as before when it ends.
 * Source: D. Pisinger and S. Ropke, Large neighborhood search, in Handbook of Metaheuristics (2010), for letting go and filling up again; from memory. Check:
 * NearlyFullBarsTest.
 */
final class Plunge {
    /** How often bars are let go. */
    private static final int TURNS = 120;

    /** Of the bars, a share in hundredths between the first and the sum of both is let go. */
    private static final int LET_GO = 12;

    private static final int LET_GO_MORE = 34;

    /** A pattern as much in use as this is taken beside the likeliest. */
    private static final double LIKELY = 0.75;

    private final PoolSearch search;
    private final Cutting cutting;
    private final Effort effort;
    private final PoolProgram patterns;
    private final RowProgram program;
    private final Column[] pool;
    private final double[] sideLow;
    private final double[] sideHigh;
    private final boolean[] shut;
    private List<Column> bars = new ArrayList<>();
    private int[] demand;
    private int[] supply;
    private long seed = 1;

    Plunge(PoolSearch search, Cutting cutting, Effort effort) {
        this.search = search;
        this.cutting = cutting;
        this.effort = effort;
        this.patterns = search.program();
        this.program = patterns.rows();
        this.pool = patterns.pool();
        this.sideLow = new double[patterns.sideRows().size()];
        this.sideHigh = new double[sideLow.length];
        this.shut = new boolean[pool.length];
        this.demand = cutting.demand.clone();
        this.supply = cutting.supply.clone();
    }

    void down() {
        boolean openBefore = search.isOpen();
        List<SideRow> sideRows = patterns.sideRows();
        for (int n = 0; n < sideLow.length; n++) {
            int row = sideRows.get(n).row;
            sideLow[n] = program.low(row);
            sideHigh[n] = program.high(row);
            program.limit(row, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        List<Column> most = List.of();
        for (int turn = 0; turn < TURNS && !effort.spent(); turn++) {
            fill(mostly(most));
            if (toTheEnd()) break;
            if (bars.size() >= most.size()) most = List.copyOf(bars);
        }
        fill(List.of());
        for (int n = 0; n < sideLow.length; n++) program.limit(sideRows.get(n).row, sideLow[n], sideHigh[n]);
        search.open(openBefore);
    }

    /** True with a plan; false at the last bars below which fractions still held the rest. */
    private boolean toTheEnd() {
        List<Column> held = List.copyOf(bars);
        boolean several = false;
        while (true) {
            if (search.solve()) {
                held = List.copyOf(bars);
                List<PoolProgram.Use> used = patterns.used();
                if (search.takeIfWhole(used, bars)) return true;
                if (!fix(used)) break;
                several = bars.size() - held.size() > 1;
            } else if (several && !effort.spent()) {
                // too many at a time: the same once more, with the likeliest alone
                fill(held);
                if (!search.solve() || !fixLikeliest(patterns.used())) break;
                several = false;
            } else {
                break;
            }
        }
        bars = new ArrayList<>(held);
        return false;
    }

    private List<Column> mostly(List<Column> of) {
        int letGo = LET_GO + picked(LET_GO_MORE);
        List<Column> left = new ArrayList<>();
        for (Column bar : of) {
            if (picked(100) >= letGo) left.add(bar);
        }
        return left;
    }

    private int picked(int from) {
        seed = seed * 6364136223846793005L + 1442695040888963407L;
        return (int) ((seed >>> 33) % from);
    }

    private void fill(List<Column> with) {
        bars = new ArrayList<>();
        demand = cutting.demand.clone();
        supply = cutting.supply.clone();
        for (Column bar : with) take(bar);
        limits();
    }

    /** Whole parts, and of the rest the likeliest; false where there is nothing to take. */
    private boolean fix(List<PoolProgram.Use> used) {
        int before = bars.size();
        List<PoolProgram.Use> rest = new ArrayList<>();
        for (PoolProgram.Use use : used) {
            for (long n = (long) Math.floor(use.times() + PoolProgram.WHOLE); n > 0; n--) take(use.column());
            if (part(use) > PoolProgram.WHOLE) rest.add(use);
        }
        rest.sort(Comparator.<PoolProgram.Use>comparingLong(use -> -Math.round(part(use) * 1e6))
                .thenComparing(PoolProgram.Use::number));
        boolean first = true;
        for (PoolProgram.Use use : rest) {
            if (!first && part(use) < LIKELY) break;
            if (take(use.column())) first = false;
        }
        limits();
        return bars.size() > before;
    }

    private boolean fixLikeliest(List<PoolProgram.Use> used) {
        List<PoolProgram.Use> likely = new ArrayList<>(used);
        likely.sort(Comparator.<PoolProgram.Use>comparingLong(use -> -Math.round(use.times() * 1e6))
                .thenComparing(PoolProgram.Use::number));
        for (PoolProgram.Use use : likely) {
            if (!take(use.column())) continue;
            limits();
            return true;
        }
        return false;
    }

    private static double part(PoolProgram.Use use) {
        return use.times() - Math.floor(use.times() + PoolProgram.WHOLE);
    }

    private boolean take(Column column) {
        if (!column.within(demand, supply)) return false;
        column.takeFrom(demand);
        if (supply[column.kind] != Cutting.UNLIMITED) supply[column.kind]--;
        bars.add(column);
        return true;
    }

    /** The program asks for what the bars leave, of patterns that fit it. */
    private void limits() {
        long cost = 0;
        for (Column bar : bars) cost += cutting.price[bar.kind];
        search.fixed(cost);
        for (int p = 0; p < pool.length; p++) {
            boolean out = !pool[p].within(demand, supply);
            if (out != shut[p]) patterns.bar(p, out ? 1 : -1);
            shut[p] = out;
        }
        effort.add(pool.length / 4 + 1);
        int sizes = cutting.sizes();
        for (int i = 0; i < sizes; i++) program.limit(i, demand[i], Double.POSITIVE_INFINITY);
        for (int k = 0; k < supply.length; k++) {
            boolean unlimited = supply[k] == Cutting.UNLIMITED;
            program.limit(
                    patterns.kindRow(k), Double.NEGATIVE_INFINITY, unlimited ? Double.POSITIVE_INFINITY : supply[k]);
        }
    }
}
