package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Fractions of the patterns of a {@link PatternPool}, under cuts and choices: a row for the pieces of each size, one for the bars of each kind, and side rows. Patterns
 * come into the program as they pay, priced all of them in whole numbers, so that what is shown of the least cost holds whatever the rounding of the program was.
 * Check: PoolSearchTest.
 */
final class PoolProgram {
    /** Of what is used so much less or more than a whole number of times. */
    static final double WHOLE = 1e-5;

    private static final int COLUMNS_A_ROUND = 80;

    /** Of the patterns that come in together so many have the same longest piece. */
    private static final int COLUMNS_OF_A_SIZE = 3;

    private static final int PIVOTS = 50_000;

    /** Sums of duals stay below this, or nothing is shown by them. */
    private static final double MOST_SUM = 4e18;

    private final Cutting cutting;
    private final Effort effort;
    private final long dearest;
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

    /** What is shown of the least cost, {@link #scale} to the cent. */
    private long shown;

    PoolProgram(Cutting cutting, List<Column> pool, Effort effort) {
        this.cutting = cutting;
        this.effort = effort;
        this.dearest = cutting.dearest();
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
    }

    /** What is shown of the least cost of fractions. */
    enum Shown {
        WITHIN,
        ABOVE,
        NOTHING
    }

    /** A pattern in use. */
    record Use(int number, Column column, double times) {}

    RowProgram rows() {
        return program;
    }

    int cuts() {
        return program.rows() - sizes - kinds;
    }

    /** The row of the bars of a kind. */
    int kindRow(int kind) {
        return sizes + kind;
    }

    List<SideRow> sideRows() {
        return sideRows;
    }

    /** Patterns that are still in some plan sought; {@link #bar} takes their numbers. */
    Column[] pool() {
        return pool;
    }

    List<Use> used() {
        List<Use> used = new ArrayList<>();
        for (int p : inProgram) {
            double times = program.valueOf(placeInProgram[p]);
            if (times > WHOLE) used.add(new Use(p, pool[p], times));
        }
        return used;
    }

    /** Least cost of fractions under the choices made, against what a plan sought may cost at the most. */
    Shown solve(long most) {
        while (true) {
            long before = program.steps();
            RowProgram.End end = program.minimise(PIVOTS);
            effort.add(program.steps() - before);
            if (end == RowProgram.End.UNFINISHED || effort.spent()) return Shown.NOTHING;
            boolean impossible = end == RowProgram.End.INFEASIBLE;
            price(impossible);
            if (isTooLarge()) return Shown.NOTHING;
            long bars = mostBars(most);
            if (grow(bars)) continue;
            shown = shownByRows() + least() * bars;
            if (impossible) return shown <= 0 ? Shown.NOTHING : Shown.ABOVE;
            return couldCost(most) ? Shown.WITHIN : Shown.ABOVE;
        }
    }

    /** Whether a plan of at most so much is still possible by what {@link #solve} showed last. */
    boolean couldCost(long most) {
        return shown <= most * scale;
    }

    /** By how much any pattern costs less than its pieces are worth; zero or less. */
    private long least() {
        long least = 0;
        for (int p = 0; p < pool.length; p++) {
            if (barred[p] == 0) least = Math.min(least, reduced[p]);
        }
        return least;
    }

    /** Bars in a plan of at most so much. */
    private long mostBars(long most) {
        long cheapest = Long.MAX_VALUE;
        for (int k = 0; k < kinds; k++) cheapest = Math.min(cheapest, cutting.price[k]);
        long pieces = cutting.pieces();
        return cheapest <= 0 ? pieces : Math.min(pieces, Math.max(0, most) / cheapest);
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
        effort.add(looks / 12 + pool.length / 8 + 1);
    }

    /** Whether sums of dual times limit, or of what a pattern counts in its rows, might not be whole numbers of the machine. */
    private boolean isTooLarge() {
        double sum = 0;
        for (int r = 0; r < dual.length; r++) {
            if (dual[r] == 0) continue;
            double limit = dual[r] > 0 ? program.low(r) : program.high(r);
            sum += Math.abs((double) dual[r]) * Math.max(1, Math.abs(limit));
        }
        return sum > MOST_SUM;
    }

    /** What the rows alone show: the sum of dual times the limit that binds. */
    private long shownByRows() {
        long sum = 0;
        for (int r = 0; r < dual.length; r++) {
            if (dual[r] > 0) sum += dual[r] * (long) program.low(r);
            if (dual[r] < 0) sum += dual[r] * (long) program.high(r);
        }
        return sum;
    }

    /**
     * The patterns that pay most into the program, each with another longest piece as far as there are. What so many bars together lose to those left out is less
     * than half a step of cost.
     */
    private boolean grow(long bars) {
        long ofAStep = cutting.step() * scale / (2 * Math.max(1, bars));
        long pays = -Math.max(1, Math.min((long) Math.max(100, 1e-7 * dearest * scale), ofAStep));
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
            if (withFirst[first]++ >= COLUMNS_OF_A_SIZE) continue;
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

    /** Without choices made: patterns that by now are in no plan of at most so much go for good. */
    void clear(long most) {
        long slack = most * scale - (shownByRows() + least() * mostBars(most));
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

    /** The cut that of these sizes half the pieces, rounded up, need as many bars. */
    void addHalfUp(int[] of) {
        int sum = 0;
        for (int size : of) sum += cutting.demand[size];
        addSide(SideRow.Counts.HALF_UP, of, -1, Math.floorDiv(sum + 1, 2), Double.POSITIVE_INFINITY);
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

    /** How many patterns there still are with each size. */
    int[] patternsOfSizes() {
        int[] patterns = new int[sizes];
        for (int p = 0; p < pool.length; p++) {
            if (barred[p] > 0) continue;
            for (int size : pool[p].size) patterns[size]++;
        }
        effort.add(pool.length / 8 + 1);
        return patterns;
    }

    /** The patterns in which two sizes are apart, or those in which they are together. */
    List<Integer> withPair(int[] pair, boolean apart) {
        List<Integer> found = new ArrayList<>();
        for (int p = 0; p < pool.length; p++) {
            boolean one = pool[p].count(pair[0]) > 0;
            boolean other = pool[p].count(pair[1]) > 0;
            if (apart ? one != other : one && other) found.add(p);
        }
        effort.add(pool.length / 16 + 1);
        return found;
    }

    /** Takes a pattern out once more, or once less. */
    void bar(int p, int by) {
        barred[p] += by;
        if (placeInProgram[p] >= 0) program.switchOff(placeInProgram[p], barred[p] > 0);
    }

    /** A row that counts the bars with two sizes together; of one size twice. */
    int pairRow(int[] pair) {
        int[] of = pair[0] == pair[1] ? new int[] {pair[0]} : pair;
        for (SideRow side : sideRows) {
            if (side.counts == SideRow.Counts.TOGETHER && Arrays.equals(side.sizes, of)) return side.row;
        }
        return addSide(SideRow.Counts.TOGETHER, of, -1, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY).row;
    }

    /** A row that counts the bars cut by one pattern. */
    int patternRow(int pattern) {
        for (SideRow side : sideRows) {
            if (side.counts == SideRow.Counts.PATTERN && side.pattern == pattern) return side.row;
        }
        return addSide(SideRow.Counts.PATTERN, new int[0], pattern, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
                .row;
    }
}
