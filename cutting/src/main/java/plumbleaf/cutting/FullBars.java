package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Full bars that take every piece once, where a plan at the bound wastes nothing and few patterns fill a bar. Depth first, without fractions: the size with the
 * fewest patterns left is decided next, sooner the oftener it was what stopped the search; a size with one pattern left takes it at once. It begins anew again and
 * again, each time for somewhat longer, and knows by then which sizes are in the way. Finds a plan, or shows that these patterns hold none.
 * Source: D. E. Knuth, Dancing links (2000), for the size with the fewest; F. Boussemart and others, Boosting systematic search by weighting constraints (ECAI
 * 2004), for the weights; both from memory. Check: FullBarsTest.
 */
final class FullBars {
    /** With more patterns to a size fractions lead there sooner. */
    private static final int PATTERNS_A_SIZE = 40;

    private static final int FIRST_TRIAL = 1_000;
    private static final double LONGER = 1.05;

    private final Effort effort;
    private final FewestOthers order;
    private final Column[] patterns;
    private final int[][] with;
    private final int[] demand;
    private final int[] left;
    private final double[] weight;
    private final boolean[] out;
    private final int[] outInOrder;
    private final int[] taken;
    private final int[] single;
    private final boolean[] isSingle;
    private int outs;
    private int takes;
    private int singles;
    private int stoppedBy;
    private long choices;
    private long mostChoices;

    /** What a bar cut so loses, and the patterns by that, those that lose most first. */
    private final long[] loss;

    private final int[] byLoss;

    /** What the bars still to be cut may lose in all. */
    private long mayLose;

    private FullBars(Cutting cutting, List<Column> patterns, long[] loss, long mayLose, Effort effort) {
        this.effort = effort;
        this.patterns = patterns.toArray(new Column[0]);
        this.loss = loss.clone();
        this.mayLose = mayLose;
        this.byLoss = IntStream.range(0, loss.length)
                .filter(p -> loss[p] > 0)
                .boxed()
                .sorted(Comparator.<Integer>comparingLong(p -> -loss[p]).thenComparing(p -> p))
                .mapToInt(p -> p)
                .toArray();
        this.demand = cutting.demand.clone();
        int sizes = demand.length;
        this.left = new int[sizes];
        this.order = new FewestOthers(this.patterns, left);
        this.with = new int[sizes][];
        this.weight = new double[sizes];
        this.out = new boolean[this.patterns.length];
        this.outInOrder = new int[this.patterns.length];
        this.taken = new int[cutting.pieces()];
        this.single = new int[sizes];
        this.isSingle = new boolean[sizes];
        Arrays.fill(weight, 1);
        for (Column each : patterns) for (int size : each.size) left[size]++;
        for (int size = 0; size < sizes; size++) with[size] = new int[left[size]];
        int[] at = new int[sizes];
        for (int p = 0; p < this.patterns.length; p++)
            for (int size : this.patterns[p].size) with[size][at[size]++] = p;
    }

    /** Bars that take every piece, or none: then {@code shown} where there is no such plan. */
    record Found(List<Column> bars, boolean shown) {
        Found {
            bars = List.copyOf(bars);
        }
    }

    private static final Found OPEN = new Found(List.of(), false);

    /**
     * @param patterns some or all that fill a bar
     * @return the bars; none where the effort ran out, or ({@code shown}) where these patterns hold no plan
     */
    static Found of(Cutting cutting, List<Column> patterns, Effort effort) {
        if (patterns.size() > PATTERNS_A_SIZE * cutting.sizes()) return OPEN;
        return new FullBars(cutting, patterns, new long[patterns.size()], 0, effort).search();
    }

    /**
     * The same where bars may lose something.
     *
     * @param patterns each of which alone loses no more than {@code mayLose}
     * @param loss of a bar cut by each of them
     * @param mayLose all bars together, at the most
     */
    static Found losing(Cutting cutting, List<Column> patterns, long[] loss, long mayLose, Effort effort) {
        return new FullBars(cutting, patterns, loss, mayLose, effort).search();
    }

    /** The patterns of as many pieces as a bar holds on the average, rounded down and up: a plan of nothing else is likely where pieces are much alike. */
    static List<Column> usual(Cutting cutting, List<Column> patterns, long bars) {
        long least = cutting.pieces() / bars;
        long most = (cutting.pieces() + bars - 1) / bars;
        return patterns.stream()
                .filter(each -> {
                    int pieces = Arrays.stream(each.times).sum();
                    return pieces >= least && pieces <= most;
                })
                .toList();
    }

    private enum End {
        FOUND,
        NONE,
        STOPPED
    }

    private Found search() {
        for (int size = 0; size < demand.length; size++) {
            if (demand[size] > 0 && left[size] == 0) return new Found(List.of(), true);
        }
        for (mostChoices = FIRST_TRIAL; !effort.spent(); mostChoices = (long) (mostChoices * LONGER)) {
            choices = 0;
            End end = choose();
            if (end == End.FOUND) {
                List<Column> bars = new ArrayList<>();
                for (int n = 0; n < takes; n++) bars.add(patterns[taken[n]]);
                return new Found(bars, true);
            }
            if (end == End.NONE) return new Found(List.of(), true);
            backTo(0, 0);
            forgetSingles();
        }
        return OPEN;
    }

    private End choose() {
        if (++choices > mostChoices || effort.spent()) return End.STOPPED;
        int size = tightest();
        if (size < 0) return End.FOUND;
        int outsBefore = outs;
        int takesBefore = takes;
        for (int p : order.inOrder(stillIn(size))) {
            if (out[p]) continue;
            int outsHere = outs;
            int takesHere = takes;
            if (goesOn(take(p))) {
                End end = choose();
                if (end != End.NONE) return end;
            }
            backTo(outsHere, takesHere);
            if (!goesOn(rule(p))) break;
            if (demand[size] == 0) {
                End end = choose();
                if (end != End.NONE) return end;
                break;
            }
        }
        backTo(outsBefore, takesBefore);
        return End.NONE;
    }

    private int[] stillIn(int size) {
        return Arrays.stream(with[size]).filter(p -> !out[p]).toArray();
    }

    /** Fewest patterns for its weight; below zero when every piece is cut. */
    private int tightest() {
        int tightest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int size = 0; size < demand.length; size++) {
            if (demand[size] == 0) continue;
            double here = left[size] / weight[size];
            if (here < least) {
                least = here;
                tightest = size;
            }
        }
        effort.add(demand.length / 16 + 1);
        return tightest;
    }

    /** Sizes with one pattern left take it, one after the other; false when a size has none. */
    private boolean goesOn(boolean sofar) {
        boolean going = sofar;
        while (going && singles > 0) {
            int size = single[--singles];
            isSingle[size] = false;
            if (demand[size] == 0 || left[size] != 1) continue;
            for (int p : with[size]) {
                if (out[p]) continue;
                going = take(p);
                break;
            }
            if (going && demand[size] > 0) remember(size);
        }
        if (!going) {
            weight[stoppedBy]++;
            forgetSingles();
        }
        return going;
    }

    private void remember(int size) {
        if (isSingle[size]) return;
        isSingle[size] = true;
        single[singles++] = size;
    }

    private void forgetSingles() {
        while (singles > 0) isSingle[single[--singles]] = false;
    }

    /** A bar cut so; false when a size is left without a pattern. */
    private boolean take(int p) {
        Column bar = patterns[p];
        taken[takes++] = p;
        for (int k = 0; k < bar.size.length; k++) demand[bar.size[k]] -= bar.times[k];
        boolean going = loss[p] == 0 || loses(loss[p]);
        for (int size : bar.size) {
            int still = demand[size];
            effort.add(with[size].length / 12 + 1);
            for (int other : with[size]) {
                if (out[other] || (still > 0 && patterns[other].count(size) <= still)) continue;
                if (!rule(other)) going = false;
            }
        }
        return going;
    }

    /** False where patterns that would lose too much by now leave a size without any. */
    private boolean loses(long more) {
        mayLose -= more;
        boolean going = mayLose >= 0;
        for (int p : byLoss) {
            if (loss[p] <= mayLose) break;
            if (!out[p] && !rule(p)) going = false;
        }
        effort.add(1);
        return going;
    }

    /** Takes a pattern out; false when that leaves a size without any. */
    private boolean rule(int p) {
        out[p] = true;
        outInOrder[outs++] = p;
        boolean going = true;
        for (int size : patterns[p].size) {
            int now = --left[size];
            if (now > 1 || demand[size] == 0) continue;
            if (now == 1) {
                remember(size);
            } else {
                stoppedBy = size;
                going = false;
            }
        }
        effort.add(1);
        return going;
    }

    private void backTo(int outsBefore, int takesBefore) {
        while (outs > outsBefore) {
            int p = outInOrder[--outs];
            out[p] = false;
            for (int size : patterns[p].size) left[size]++;
        }
        while (takes > takesBefore) {
            Column bar = patterns[taken[--takes]];
            mayLose += loss[taken[takes]];
            for (int k = 0; k < bar.size.length; k++) demand[bar.size[k]] += bar.times[k];
        }
    }
}
