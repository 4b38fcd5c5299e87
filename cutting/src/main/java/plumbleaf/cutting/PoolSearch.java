package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The best plan from a {@link PatternPool}, by branch and cut: subset rows where the fractions break them; then two sizes together in a bar or not, bars of a
 * kind, a pattern. What is left out of the pool is in no plan sought, so "none" is a proof. Each end of the search is shown in whole numbers.
 * Source: D. M. Ryan and B. A. Foster, An integer programming approach to scheduling (1981), for the branching; Jepsen and others (2008) for the cuts.
 * Check: ProvenCutPlannerTest, PoolSearchTest.
 */
final class PoolSearch {
    static final double WHOLE = 1e-5;
    private static final int COLUMNS_A_ROUND = 80;
    private static final int PIVOTS = 50_000;
    private static final int ROOT_ROUNDS = 25;
    /** Cuts beyond as many as there are sizes, or beyond these, slow every pivot more than they spare choices. */
    private static final int ROWS_MORE = 120;

    /** Choices below one another: no plan of a job is so deep, and what calls itself needs room, of which a thread may have half a megabyte. */
    private static final int MOST_DEPTH = 400;

    /** With as many sizes pairs alone are a long way down: whole patterns are tried first. */
    private static final int SIZES_TO_PLUNGE = 100;

    private final Cutting cutting;
    private final Effort effort;
    private final long dearest;
    private final long step;
    private final int sizes;
    private final int kinds;
    private final RowProgram program;
    private Column[] pool;
    private int[] placeInProgram;
    private int[] barred;
    private final List<Integer> inProgram = new ArrayList<>();
    private final List<SideRow> sideRows = new ArrayList<>();
    private final List<List<SideRow>> bySize = new ArrayList<>();
    private final long scale;
    private long[] dual = new long[0];
    private long[] reduced;
    private long target;
    private long fixed;
    private long proven;
    private boolean open;
    private List<Column> best = List.of();
    private int nodes;
    private final PairWeights weights;

    PoolSearch(Cutting cutting, List<Column> pool, Effort effort) {
        this.cutting = cutting;
        this.effort = effort;
        this.dearest = cutting.dearest();
        this.step = cutting.step();
        this.sizes = cutting.sizes();
        this.kinds = cutting.kinds();
        this.scale = Math.max(1, 1_000_000_000L / dearest);
        this.pool = pool.toArray(new Column[0]);
        this.placeInProgram = new int[this.pool.length];
        Arrays.fill(placeInProgram, -1);
        this.barred = new int[this.pool.length];
        this.reduced = new long[this.pool.length];
        this.program = new RowProgram(sizes + kinds + 100);
        for (int i = 0; i < sizes; i++) {
            program.addRow(cutting.demand[i], Double.POSITIVE_INFINITY);
            bySize.add(new ArrayList<>());
        }
        for (int k = 0; k < kinds; k++) {
            boolean unlimited = cutting.supply[k] == Cutting.UNLIMITED;
            program.addRow(Double.NEGATIVE_INFINITY, unlimited ? Double.POSITIVE_INFINITY : cutting.supply[k]);
        }
        this.weights = new PairWeights(sizes);
    }

    /** How a search came out. */
    enum Verdict {
        FOUND,
        NONE,
        UNSETTLED
    }

    /**
     * Looks for a plan of at most {@code most}, and for cheaper ones down to {@code least}.
     *
     * @return FOUND with {@link #best()} when there is one; then {@link #isBest()} says whether no cheaper one was left open
     */
    Verdict search(long most, long least) {
        target = most;
        proven = least;
        node(0);
        if (!best.isEmpty()) return Verdict.FOUND;
        return open ? Verdict.UNSETTLED : Verdict.NONE;
    }

    RowProgram program() {
        return program;
    }

    List<SideRow> sideRows() {
        return sideRows;
    }

    /** Patterns that are still in some plan sought; {@link #bar} takes their numbers. */
    Column[] pool() {
        return pool;
    }

    /** What bars cost that stand outside the program. */
    void fixed(long cost) {
        fixed = cost;
    }

    boolean isOpen() {
        return open;
    }

    void open(boolean isOpen) {
        open = isOpen;
    }

    List<Column> best() {
        return best;
    }

    boolean isBest() {
        return !open;
    }

    int nodes() {
        return nodes;
    }

    private boolean done() {
        return target < proven;
    }

    private void node(int depth) {
        nodes++;
        if (done()) return;
        if (effort.spent() || depth > MOST_DEPTH) {
            open = true;
            return;
        }
        int rounds = depth == 0 ? ROOT_ROUNDS : 0;
        for (int round = 0; ; round++) {
            if (!solve()) return;
            if (depth == 0) clear();
            List<Use> used = used();
            if (takeIfWhole(used)) return;
            weights.of(used);
            if (round >= rounds || program.rows() > sizes + kinds + Math.max(ROWS_MORE, sizes)) break;
            if (!addCuts(used)) break;
        }
        if (depth == 0 && sizes >= SIZES_TO_PLUNGE) {
            new Plunge(this, cutting, effort).down();
            if (done() || !solve()) return;
            weights.of(used());
        }
        branch(depth);
    }

    /** A pattern in use. */
    record Use(int number, Column column, double times) {}

    List<Use> used() {
        List<Use> used = new ArrayList<>();
        for (int p : inProgram) {
            double times = program.valueOf(placeInProgram[p]);
            if (times > WHOLE) used.add(new Use(p, pool[p], times));
        }
        return used;
    }

    /** Least cost of fractions under the choices made; false when that is shown to be above the target, or nothing is known. */
    boolean solve() {
        while (true) {
            long before = program.steps();
            RowProgram.End end = program.minimise(PIVOTS);
            effort.add(program.steps() - before);
            if (end == RowProgram.End.UNFINISHED || effort.spent()) {
                open = true;
                return false;
            }
            boolean impossible = end == RowProgram.End.INFEASIBLE;
            price(impossible);
            if (grow()) continue;
            long least = Long.MAX_VALUE;
            for (int p = 0; p < pool.length; p++) {
                if (barred[p] == 0) least = Math.min(least, reduced[p]);
            }
            long shown = shown() + Math.min(0, least) * mostBars();
            if (impossible) {
                if (shown <= 0) open = true;
                return false;
            }
            return shown <= (target - fixed) * scale;
        }
    }

    /** Bars in a plan of at most the target. */
    private long mostBars() {
        long cheapest = Long.MAX_VALUE;
        for (int k = 0; k < kinds; k++) cheapest = Math.min(cheapest, cutting.price[k]);
        long pieces = cutting.pieces();
        return cheapest <= 0 ? pieces : Math.min(pieces, target / cheapest);
    }

    /** Duals as whole numbers, and by them what every pattern of the pool costs. */
    private void price(boolean impossible) {
        dual = new long[program.rows()];
        for (int r = 0; r < dual.length; r++) {
            double each = program.dual(r) * dearest * scale;
            if (each > 0 && Double.isInfinite(program.low(r))) each = 0;
            if (each < 0 && Double.isInfinite(program.high(r))) each = 0;
            dual[r] = Math.round(Math.max(-4e15, Math.min(4e15, each)));
        }
        int[] sum = new int[dual.length];
        int[] touched = new int[dual.length];
        long looks = 0;
        for (int p = 0; p < pool.length; p++) {
            if (barred[p] > 0) continue;
            Column column = pool[p];
            long cost = (impossible ? 0 : cutting.price[column.kind] * scale) - dual[sizes + column.kind];
            int n = 0;
            for (int k = 0; k < column.size.length; k++) {
                int size = column.size[k];
                int times = column.times[k];
                cost -= times * dual[size];
                for (SideRow side : bySize.get(size)) {
                    int row = side.row;
                    if (dual[row] == 0) continue;
                    if (sum[row] == 0) touched[n++] = row;
                    sum[row] += side.counts == SideRow.Counts.HALF_UP ? times : side.sizes.length == 1 ? times / 2 : 1;
                    looks++;
                }
            }
            for (int t = 0; t < n; t++) {
                int row = touched[t];
                SideRow side = sideRows.get(row - sizes - kinds);
                int counted = switch (side.counts) {
                    case HALF_UP -> (sum[row] + 1) / 2;
                    case TOGETHER -> sum[row] >= side.sizes.length ? 1 : 0;
                    case PATTERN -> 0;
                };
                cost -= counted * dual[row];
                sum[row] = 0;
            }
            reduced[p] = cost;
            looks += column.size.length;
        }
        for (SideRow side : sideRows) {
            if (side.counts == SideRow.Counts.PATTERN) reduced[side.pattern] -= dual[side.row];
        }
        effort.add(looks / 16 + pool.length / 16 + 1);
    }

    /** What the rows alone show: the sum of dual times the limit that binds. */
    private long shown() {
        long sum = 0;
        for (int r = 0; r < dual.length; r++) {
            if (dual[r] > 0) sum += dual[r] * (long) program.low(r);
            if (dual[r] < 0) sum += dual[r] * (long) program.high(r);
        }
        return sum;
    }

    /** The patterns that pay most into the program, each with another longest piece as far as there are. */
    private boolean grow() {
        long pays = -(long) Math.max(100, 1e-7 * dearest * scale);
        List<Integer> paying = new ArrayList<>();
        for (int p = 0; p < pool.length; p++) {
            if (barred[p] == 0 && placeInProgram[p] < 0 && reduced[p] < pays) paying.add(p);
        }
        if (paying.isEmpty()) return false;
        paying.sort(Comparator.<Integer>comparingLong(p -> reduced[p]).thenComparing(p -> p));
        int[] withFirst = new int[sizes];
        int added = 0;
        for (int p : paying) {
            int first = pool[p].size[0];
            if (withFirst[first]++ >= 3) continue;
            add(p);
            if (++added >= COLUMNS_A_ROUND) break;
        }
        return true;
    }

    private void add(int p) {
        Column column = pool[p];
        int[] rows = new int[column.size.length + 1 + sideRows.size()];
        double[] factors = new double[rows.length];
        int n = 0;
        for (int k = 0; k < column.size.length; k++) {
            rows[n] = column.size[k];
            factors[n++] = column.times[k];
        }
        rows[n] = sizes + column.kind;
        factors[n++] = 1;
        for (SideRow side : sideRows) {
            int counted = side.of(column, p);
            if (counted == 0) continue;
            rows[n] = side.row;
            factors[n++] = counted;
        }
        placeInProgram[p] = program.addColumn(
                (double) cutting.price[column.kind] / dearest, Arrays.copyOf(rows, n), Arrays.copyOf(factors, n));
        inProgram.add(p);
    }

    /** At the root: patterns that by now are in no plan of at most the target go for good. */
    private void clear() {
        long least = 0;
        for (int p = 0; p < pool.length; p++) {
            if (barred[p] == 0) least = Math.min(least, reduced[p]);
        }
        long slack = target * scale - (shown() + least * mostBars());
        int kept = 0;
        for (int p = 0; p < pool.length; p++) {
            if (barred[p] == 0 && reduced[p] > slack) {
                barred[p]++;
                if (placeInProgram[p] >= 0) program.switchOff(placeInProgram[p], true);
            }
            if (barred[p] == 0 || placeInProgram[p] >= 0) kept++;
        }
        if (kept * 2 < pool.length) compact(kept);
    }

    private void compact(int kept) {
        Column[] fewer = new Column[kept];
        int[] places = new int[kept];
        int[] bars = new int[kept];
        long[] costs = new long[kept];
        inProgram.clear();
        int n = 0;
        for (int p = 0; p < pool.length; p++) {
            if (barred[p] > 0 && placeInProgram[p] < 0) continue;
            fewer[n] = pool[p];
            places[n] = placeInProgram[p];
            bars[n] = barred[p];
            costs[n] = reduced[p];
            if (places[n] >= 0) inProgram.add(n);
            n++;
        }
        pool = fewer;
        placeInProgram = places;
        barred = bars;
        reduced = costs;
    }

    /** Rounds what is whole already; a plan when every pattern is. */
    private boolean takeIfWhole(List<Use> used) {
        return takeIfWhole(used, List.of());
    }

    /** @param before bars that are fixed */
    boolean takeIfWhole(List<Use> used, List<Column> before) {
        List<Column> bars = new ArrayList<>(before);
        int[] demand = cutting.demand.clone();
        int[] supply = cutting.supply.clone();
        long cost = 0;
        for (Column bar : before) {
            bar.takeFrom(demand);
            if (supply[bar.kind] != Cutting.UNLIMITED) supply[bar.kind]--;
            cost += cutting.price[bar.kind];
        }
        for (Use use : used) {
            long times = Math.round(use.times());
            if (Math.abs(use.times() - times) > 1e-3) return false;
            for (long n = 0; n < times; n++) {
                Column trimmed = use.column().trimmedTo(demand);
                if (trimmed.isEmpty()) continue;
                trimmed.takeFrom(demand);
                if (supply[trimmed.kind] != Cutting.UNLIMITED && --supply[trimmed.kind] < 0) return false;
                bars.add(trimmed);
                cost += cutting.price[trimmed.kind];
            }
        }
        for (int each : demand) {
            if (each > 0) return false;
        }
        if (cost <= target) {
            best = List.copyOf(bars);
            target = cost - step;
        }
        return true;
    }

    private boolean addCuts(List<Use> used) {
        List<int[]> found = new ArrayList<>(OddSets.broken(cutting.demand, used, effort));
        found.addAll(weights.brokenTriples(cutting.demand, effort));
        for (int[] set : found) {
            int sum = 0;
            for (int size : set) sum += cutting.demand[size];
            addSide(SideRow.Counts.HALF_UP, set, -1, Math.floorDiv(sum + 1, 2), Double.POSITIVE_INFINITY);
        }
        return !found.isEmpty();
    }

    private SideRow addSide(SideRow.Counts counts, int[] of, int pattern, double least, double most) {
        SideRow side = new SideRow(counts, of, pattern, program.rows());
        double[] ofColumn = new double[program.columns()];
        for (int p : inProgram) ofColumn[placeInProgram[p]] = side.of(pool[p], p);
        program.addRow(least, most, ofColumn);
        sideRows.add(side);
        if (counts != SideRow.Counts.PATTERN) {
            for (int size : of) bySize.get(size).add(side);
        }
        return side;
    }

    private void branch(int depth) {
        List<Use> used = used();
        int kind = fractionalKind(used);
        if (kind >= 0) {
            branchOnRow(sizes + kind, sumOf(used, kind), depth);
            return;
        }
        int[] pair = weights.mostOpenPair(cutting.demand, patternsOfSizes());
        if (pair.length == 0) {
            Use most = used.get(0);
            double openness = -1;
            for (Use use : used) {
                double part = use.times() - Math.floor(use.times());
                double here = Math.min(part, 1 - part);
                if (here > openness) {
                    openness = here;
                    most = use;
                }
            }
            branchOnRow(patternRow(most.number()), most.times(), depth);
            return;
        }
        boolean single = pair[0] != pair[1] && cutting.demand[pair[0]] == 1 && cutting.demand[pair[1]] == 1;
        if (!single) {
            branchOnRow(pairRow(pair), weights.weight(pair[0], pair[1]), depth);
            return;
        }
        for (int way = 0; way < 2 && !done(); way++) {
            boolean together = way == 0;
            List<Integer> shut = new ArrayList<>();
            for (int p = 0; p < pool.length; p++) {
                boolean one = pool[p].count(pair[0]) > 0;
                boolean other = pool[p].count(pair[1]) > 0;
                if (together ? one != other : one && other) shut.add(p);
            }
            effort.add(pool.length / 16 + 1);
            for (int p : shut) bar(p, 1);
            node(depth + 1);
            for (int p : shut) bar(p, -1);
        }
    }

    private int[] patternsOfSizes() {
        int[] patterns = new int[sizes];
        for (int p = 0; p < pool.length; p++) {
            if (barred[p] > 0) continue;
            for (int size : pool[p].size) patterns[size]++;
        }
        effort.add(pool.length / 8 + 1);
        return patterns;
    }

    void bar(int p, int by) {
        barred[p] += by;
        if (placeInProgram[p] >= 0) program.switchOff(placeInProgram[p], barred[p] > 0);
    }

    private int fractionalKind(List<Use> used) {
        if (kinds == 1) return -1;
        int best = -1;
        double open = 1e-4;
        for (int k = 0; k < kinds; k++) {
            double sum = sumOf(used, k);
            double here = Math.abs(sum - Math.round(sum));
            if (here > open) {
                open = here;
                best = k;
            }
        }
        return best;
    }

    private static double sumOf(List<Use> used, int kind) {
        double sum = 0;
        for (Use use : used) {
            if (use.column().kind == kind) sum += use.times();
        }
        return sum;
    }

    private int pairRow(int[] pair) {
        int[] of = pair[0] == pair[1] ? new int[] {pair[0]} : pair;
        for (SideRow side : sideRows) {
            if (side.counts == SideRow.Counts.TOGETHER && Arrays.equals(side.sizes, of)) return side.row;
        }
        return addSide(SideRow.Counts.TOGETHER, of, -1, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY).row;
    }

    private int patternRow(int pattern) {
        for (SideRow side : sideRows) {
            if (side.counts == SideRow.Counts.PATTERN && side.pattern == pattern) return side.row;
        }
        return addSide(SideRow.Counts.PATTERN, new int[0], pattern, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
                .row;
    }

    /** More first: it brings the end nearer. */
    private void branchOnRow(int row, double value, int depth) {
        double low = program.low(row);
        double high = program.high(row);
        double down = Math.floor(value + 1e-4);
        program.limit(row, Math.max(low, down + 1), high);
        node(depth + 1);
        if (!done()) {
            program.limit(row, low, Math.min(high, down));
            node(depth + 1);
        }
        program.limit(row, low, high);
    }
}
