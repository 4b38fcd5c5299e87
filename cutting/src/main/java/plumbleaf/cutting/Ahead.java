package plumbleaf.cutting;

import java.util.Arrays;
import java.util.List;

/**
 * Full bars that take every piece once, where all patterns hold equally many pieces and are few, so that there are hardly any plans but the one that was cut up. Depth
 * first with a look ahead: of each size with two patterns left both are tried before anything is decided, and one that leaves a size without any goes. The
 * size is decided next whose patterns are few and take many others with them, sooner the oftener it was what stopped the search. Where nothing is found soon it begins
 * anew, knowing by then which sizes are in the way, and each time for so much longer that all is tried in the end: then there is a plan, or these patterns hold none.
 * Source: C. M. Li and Anbulagan, Heuristics based on unit propagation for satisfiability problems (IJCAI 1997), for looking ahead; F. Boussemart and others, Boosting
 * systematic search by weighting constraints (ECAI 2004), for what stopped it; both from memory. Check: AheadTest.
 */
final class Ahead {
    /** With more patterns to a size there mostly are many plans, and the plainer search meets one sooner. */
    private static final int PATTERNS_A_SIZE = 12;

    private static final int FIRST_TRIAL = 1_000;

    /** Not often, since all may have to be tried once. */
    private static final int LONGER = 10;

    /** Looked ahead for sizes with so many patterns left. */
    private static final int TWO = 2;

    /** A pattern that takes so many others with it counts for half of one. */
    private static final double HALF = 10;

    /** What patterns take with them is asked of sizes with no more than these. */
    private static final int FEW = 8;

    private final Effort effort;
    private final FewestOthers order;
    private final PatternsLeft state;
    private final int[] demand;
    private final int[] left;
    private final double[] weight;

    /** For each pattern tried since the last choice what it counts for in a size, and otherwise 1. */
    private final double[] counts;

    private long choices;
    private long mostChoices;

    private Ahead(Cutting cutting, List<Column> patterns, Effort effort) {
        this.effort = effort;
        this.state = new PatternsLeft(cutting, patterns, effort);
        this.demand = state.demand;
        this.left = state.left;
        this.order = new FewestOthers(patterns.toArray(new Column[0]), left);
        this.weight = new double[demand.length];
        this.counts = new double[patterns.size()];
        Arrays.fill(weight, 1);
    }

    /** Whether patterns are few, and one holds as many pieces as another. */
    static boolean suits(Cutting cutting, List<Column> patterns) {
        if (patterns.size() > PATTERNS_A_SIZE * cutting.sizes()) return false;
        return patterns.stream()
                        .mapToInt(each -> Arrays.stream(each.times).sum())
                        .distinct()
                        .count()
                <= 1;
    }

    /** @return the bars; none where the effort ran out, or ({@code shown}) where these patterns hold no plan */
    static FullBars.Found of(Cutting cutting, List<Column> patterns, Effort effort) {
        return new Ahead(cutting, patterns, effort).search();
    }

    private enum End {
        FOUND,
        NONE,
        STOPPED
    }

    private FullBars.Found search() {
        for (int size = 0; size < demand.length; size++) {
            if (demand[size] > 0 && left[size] == 0) return new FullBars.Found(List.of(), true);
        }
        for (mostChoices = FIRST_TRIAL; !effort.spent(); mostChoices *= LONGER) {
            choices = 0;
            End end = choose();
            if (end != End.STOPPED) return new FullBars.Found(end == End.FOUND ? state.bars() : List.of(), true);
            state.backTo(0);
        }
        return new FullBars.Found(List.of(), false);
    }

    private End choose() {
        if (++choices > mostChoices || effort.spent()) return End.STOPPED;
        int before = state.mark();
        End end = lookAhead() ? decide() : End.NONE;
        if (end == End.NONE) state.backTo(before);
        return end;
    }

    private End decide() {
        int size = tightest();
        if (size < 0) return End.FOUND;
        for (int p : order.inOrder(Arrays.copyOf(state.with[size], left[size]))) {
            if (!state.isLeft(p)) continue;
            int here = state.mark();
            if (goesOn(state.cut(p))) {
                End end = choose();
                if (end != End.NONE) return end;
            }
            state.backTo(here);
            if (!goesOn(state.without(p))) break;
            if (demand[size] == 0) return choose();
        }
        return End.NONE;
    }

    private boolean goesOn(boolean goes) {
        if (!goes) weight[state.stuck()]++;
        return goes;
    }

    /** Tries both patterns of each size that has two, until nothing follows any more; false where a size is left without a pattern. */
    private boolean lookAhead() {
        Arrays.fill(counts, 1);
        effort.add(counts.length / 32 + 1);
        boolean again = true;
        while (again) {
            again = false;
            for (int size = 0; size < demand.length; size++) {
                if (demand[size] == 0 || left[size] > TWO) continue;
                int wrong = wrong(size);
                if (wrong < 0) continue;
                if (!goesOn(state.without(wrong))) return false;
                again = true;
            }
            effort.add(demand.length / 16 + 1);
        }
        return true;
    }

    /** A pattern of this size that leaves some size without any, or below zero. */
    private int wrong(int size) {
        for (int at = left[size] - 1; at >= 0; at--) {
            int p = state.with[size][at];
            int here = state.mark();
            boolean goes = goesOn(state.cut(p));
            int follow = state.mark() - here;
            state.backTo(here);
            if (!goes) return p;
            counts[p] = StrictMath.pow(2, -follow / HALF);
        }
        return -1;
    }

    /** Below zero when every piece is cut. */
    private int tightest() {
        int tightest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int size = 0; size < demand.length; size++) {
            if (demand[size] == 0) continue;
            double here = counted(size) / weight[size];
            if (here < least) {
                least = here;
                tightest = size;
            }
        }
        effort.add(demand.length / 8 + 1);
        return tightest;
    }

    private double counted(int size) {
        if (left[size] > FEW) return left[size];
        double sum = 0;
        for (int at = 0; at < left[size]; at++) sum += counts[state.with[size][at]];
        return sum;
    }
}
