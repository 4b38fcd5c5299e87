package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The best plan from a {@link PatternPool}, by branch and cut: subset rows where the fractions break them; then two sizes together in a bar or not, bars of a
 * kind, a pattern. What is left out of the pool is in no plan sought, so "none" is a proof. Each end of the search is shown in whole numbers ({@link PoolProgram}).
 * Source: D. M. Ryan and B. A. Foster, An integer programming approach to scheduling (1981), for the branching; Jepsen and others (2008) for the cuts.
 * Check: ProvenCutPlannerTest, PoolSearchTest.
 */
final class PoolSearch {
    private static final int ROOT_ROUNDS = 25;

    /** Cuts beyond as many as there are sizes, or beyond these, slow every pivot more than they spare choices. */
    private static final int ROWS_MORE = 120;

    /** Choices below one another: no plan of a job is so deep, and what calls itself needs room, of which a thread may have half a megabyte. */
    private static final int MOST_DEPTH = 400;

    /** With as many sizes pairs alone are a long way down: whole patterns are tried first. */
    private static final int SIZES_TO_PLUNGE = 100;

    /** What is off a whole number by no more than this is not decided. */
    private static final double NEARLY_WHOLE = 1e-4;

    private final Cutting cutting;
    private final Effort effort;
    private final long step;
    private final PoolProgram program;
    private final PairWeights weights;
    private long target;
    private long fixed;
    private long proven;
    private boolean open;
    private boolean wholePatternsFirst;
    private List<Column> best = List.of();
    private int nodes;

    PoolSearch(Cutting cutting, List<Column> pool, Effort effort) {
        this.cutting = cutting;
        this.effort = effort;
        this.step = cutting.step();
        this.program = new PoolProgram(cutting, pool, effort);
        this.weights = new PairWeights(cutting.sizes());
        this.wholePatternsFirst = cutting.sizes() >= SIZES_TO_PLUNGE;
    }

    /** Whether whole patterns are tried before choices: sooner where there is a plan, and in vain where there is none. */
    PoolSearch wholePatternsFirst(boolean first) {
        wholePatternsFirst = first;
        return this;
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

    PoolProgram program() {
        return program;
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
        int mostCuts = Math.max(ROWS_MORE, cutting.sizes());
        for (int round = 0; ; round++) {
            if (!solve()) return;
            if (depth == 0) program.clear(target);
            List<PoolProgram.Use> used = program.used();
            // Whole but for rounding: the fractions may still be a step cheaper than the plan
            if (takeIfWhole(used) && !program.couldCost(target)) return;
            weights.of(used);
            if (round >= rounds || program.cuts() > mostCuts) break;
            if (!addCuts(used)) break;
        }
        if (depth == 0 && wholePatternsFirst) {
            new Plunge(this, cutting, effort).down();
            if (done() || !solve()) return;
            weights.of(program.used());
        }
        branch(depth);
    }

    /** Under the choices made: false when no plan sought is left, or nothing is known of it. */
    boolean solve() {
        PoolProgram.Shown shown = program.solve(target - fixed);
        if (shown == PoolProgram.Shown.NOTHING) open = true;
        return shown == PoolProgram.Shown.WITHIN;
    }

    /** Rounds what is whole already; a plan when every pattern is. */
    private boolean takeIfWhole(List<PoolProgram.Use> used) {
        return takeIfWhole(used, List.of());
    }

    /** @param before bars that are fixed */
    boolean takeIfWhole(List<PoolProgram.Use> used, List<Column> before) {
        List<Column> bars = new ArrayList<>(before);
        int[] demand = cutting.demand.clone();
        int[] supply = cutting.supply.clone();
        long cost = 0;
        for (Column bar : before) {
            bar.takeFrom(demand);
            if (supply[bar.kind] != Cutting.UNLIMITED) supply[bar.kind]--;
            cost += cutting.price[bar.kind];
        }
        for (PoolProgram.Use use : used) {
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

    private boolean addCuts(List<PoolProgram.Use> used) {
        List<int[]> found = new ArrayList<>(OddSets.broken(cutting.demand, used, effort));
        found.addAll(weights.brokenTriples(cutting.demand, effort));
        for (int[] set : found) program.addHalfUp(set);
        return !found.isEmpty();
    }

    private void branch(int depth) {
        List<PoolProgram.Use> used = program.used();
        int kind = fractionalKind(used);
        if (kind >= 0) {
            branchOnRow(program.kindRow(kind), sumOf(used, kind), depth);
            return;
        }
        int[] pair = weights.mostOpenPair(cutting.demand, program.patternsOfSizes());
        if (pair.length == 0) {
            PoolProgram.Use most = used.get(0);
            double openness = -1;
            for (PoolProgram.Use use : used) {
                double part = use.times() - Math.floor(use.times());
                double here = Math.min(part, 1 - part);
                if (here > openness) {
                    openness = here;
                    most = use;
                }
            }
            if (openness > NEARLY_WHOLE) branchOnRow(program.patternRow(most.number()), most.times(), depth);
            else open = true;
            return;
        }
        boolean single = pair[0] != pair[1] && cutting.demand[pair[0]] == 1 && cutting.demand[pair[1]] == 1;
        if (!single) {
            branchOnRow(program.pairRow(pair), weights.weight(pair[0], pair[1]), depth);
            return;
        }
        for (int way = 0; way < 2 && !done(); way++) {
            List<Integer> shut = program.withPair(pair, way == 0);
            for (int p : shut) program.bar(p, 1);
            node(depth + 1);
            for (int p : shut) program.bar(p, -1);
        }
    }

    private int fractionalKind(List<PoolProgram.Use> used) {
        if (cutting.kinds() == 1) return -1;
        int best = -1;
        double open = NEARLY_WHOLE;
        for (int k = 0; k < cutting.kinds(); k++) {
            double sum = sumOf(used, k);
            double here = Math.abs(sum - Math.round(sum));
            if (here > open) {
                open = here;
                best = k;
            }
        }
        return best;
    }

    private static double sumOf(List<PoolProgram.Use> used, int kind) {
        double sum = 0;
        for (PoolProgram.Use use : used) {
            if (use.column().kind == kind) sum += use.times();
        }
        return sum;
    }

    /** More first: it brings the end nearer. */
    private void branchOnRow(int row, double value, int depth) {
        RowProgram rows = program.rows();
        double low = rows.low(row);
        double high = rows.high(row);
        double down = Math.floor(value + NEARLY_WHOLE);
        rows.limit(row, Math.max(low, down + 1), high);
        node(depth + 1);
        if (!done()) {
            rows.limit(row, low, Math.min(high, down));
            node(depth + 1);
        }
        rows.limit(row, low, high);
    }
}
