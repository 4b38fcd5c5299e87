package plumbleaf.cutting;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Puts every set of bars that costs less than the best plan to the test, cheapest first: by length, by worths that ruled out another set, by fractions, by dives
 * and by search ({@link Packing}), with few steps at first and with more for those left open. The first that holds all pieces is the cheapest, once everything
 * cheaper has been shown not to.
 */
final class SetsOfBars {
    /** For a set of bars, when it is looked at first, and again. */
    private static final List<Long> STEPS_A_SET = List.of(5_000_000L, Long.MAX_VALUE / 4);

    /** Sets of one cost left open before the next cost is looked at, at first and again; one that does is enough. */
    private static final List<Integer> OPEN_OF_A_COST = List.of(12, Integer.MAX_VALUE);

    /** Of the effort left, this part for all sets one by one; the rest for all bars together. */
    private static final double SHARE = 0.6;

    /** Larger sums of worths could pass the largest whole number. */
    private static final long MOST_NEEDED = Long.MAX_VALUE / 1_000;

    /** Patterns found for some sets serve for others, but slow each solve. */
    private static final int MANY_PATTERNS = 3_000;

    private final Cutting cutting;
    private final Standing standing;
    private final Set<Column> pool;
    private final Effort effort;
    private final SetsRuledOut ruledOut;
    private final Set<List<Integer>> cannot = new LinkedHashSet<>();
    private final long until;
    private Relaxation relaxation;
    private long stepsASet;
    private int open;
    private int mostOpen;

    private SetsOfBars(Cutting cutting, Standing standing, Set<Column> pool, Effort effort) {
        this.cutting = cutting;
        this.standing = standing;
        this.pool = pool;
        this.effort = effort;
        this.ruledOut = new SetsRuledOut(cutting);
        this.until = effort.taken() + (long) (effort.left() * SHARE);
        this.relaxation = relaxation();
    }

    /**
     * @param worths of the fractions of all bars together
     * @param pool patterns known so far, to begin with
     */
    static void settle(Cutting cutting, Standing standing, Bound worths, Set<Column> pool, Effort effort) {
        SetsOfBars sets = new SetsOfBars(cutting, standing, pool, effort);
        long[] fill = sets.fill();
        sets.ruledOut.addLength(fill);
        sets.ruledOut.add(worths, cutting.price);
        long needed = worths.isNone() ? Long.MAX_VALUE : worths.needed(cutting.demand);
        boolean byLength = needed > MOST_NEEDED;
        long[] hold = byLength ? fill : worths.held(cutting.price);
        sets.settle(new BarSets(
                cutting, hold, byLength ? cutting.volume() : needed, standing.bestCost(), sets.ruledOut, effort));
    }

    private long[] fill() {
        long[] fill = new long[cutting.kinds()];
        for (int k = 0; k < fill.length; k++)
            fill[k] = Knapsack.best(cutting.size, cutting.size, cutting.demand, cutting.room[k], effort)
                    .atMost();
        return fill;
    }

    private void settle(BarSets sets) {
        for (int pass = 0; pass < STEPS_A_SET.size() && !standing.settled() && !spent(); pass++) {
            stepsASet = STEPS_A_SET.get(pass);
            mostOpen = OPEN_OF_A_COST.get(pass);
            fromTheCheapest(sets);
        }
    }

    private void fromTheCheapest(BarSets sets) {
        boolean allShown = true;
        for (long cost = standing.bound(); ; cost++) {
            cost = sets.costFrom(cost, standing.bestCost());
            if (allShown) standing.atLeast(cost);
            if (cost >= standing.bestCost() || spent()) return;
            open = 0;
            allShown &= sets.each(cost, this::ask) && open == 0;
        }
    }

    private boolean spent() {
        return effort.spent() || effort.taken() >= until;
    }

    /** Whether another set of this cost is wanted. */
    private boolean ask(int[] set) {
        List<Integer> key = Arrays.stream(set).boxed().toList();
        if (cannot.contains(key)) return true;
        if (spent()) {
            open++;
            return false;
        }
        Packing.Verdict verdict = decide(set);
        if (verdict == Packing.Verdict.CANNOT) cannot.add(key);
        if (verdict == Packing.Verdict.UNSETTLED) open++;
        return verdict != Packing.Verdict.FITS && open < mostOpen;
    }

    private Packing.Verdict decide(int[] set) {
        effort.allowUpTo(Math.min(until, effort.taken() + stepsASet));
        if (relaxation.columns().size() > MANY_PATTERNS) relaxation = relaxation();
        Cutting here = cutting.withBars(set);
        Packing.Outcome outcome = new Packing(here, relaxation, effort).decide();
        effort.allowAll();
        if (outcome.verdict() == Packing.Verdict.FITS) standing.keep(outcome.bars());
        ruledOut.add(outcome.shown(), here.price);
        return outcome.verdict();
    }

    private Relaxation relaxation() {
        return new Relaxation(cutting.withBars(cutting.supply), pool, effort);
    }
}
