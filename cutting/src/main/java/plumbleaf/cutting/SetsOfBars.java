package plumbleaf.cutting;

import java.util.ArrayList;
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

    /** Of the effort left, this part for all sets of several kinds one by one; the rest for all bars together. */
    private static final double SHARE = 0.6;

    /** Patterns found for some sets serve for others, but slow each solve. */
    private static final int MANY_PATTERNS = 3_000;

    private final Cutting cutting;
    private final Standing standing;
    private final Set<Column> pool;
    private final Effort effort;
    private final SetsRuledOut ruledOut;
    private final Set<List<Integer>> cannot = new LinkedHashSet<>();
    private Relaxation relaxation;
    private long stepsASet;
    private int open;
    private int mostOpen;

    private SetsOfBars(Cutting cutting, Standing standing, Set<Column> pool, Effort effort) {
        this.cutting = cutting;
        this.standing = standing;
        this.pool = pool;
        this.effort = effort;
        this.ruledOut = new SetsRuledOut(cutting, effort);
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
        List<BarSets.Measure> measures = new ArrayList<>();
        if (!worths.isNone() && BarSets.holds(cutting, worths.needed(cutting.demand)))
            measures.add(BarSets.Measure.of(
                    worths.held(cutting.price), worths.needed(cutting.demand).longValueExact()));
        measures.add(BarSets.Measure.of(fill, cutting.volume()));
        long before = effort.allowOnly(cutting.kinds() > 1 ? (long) (effort.left() * SHARE) : effort.left());
        sets.settle(new BarSets(cutting, measures, standing.bestCost(), sets.ruledOut, effort));
        effort.allowAgain(before);
    }

    private long[] fill() {
        long[] fill = new long[cutting.kinds()];
        for (int k = 0; k < fill.length; k++)
            fill[k] = Knapsack.best(cutting.size, cutting.size, cutting.demand, cutting.room[k], effort)
                    .atMost();
        return fill;
    }

    private void settle(BarSets sets) {
        for (int pass = 0; pass < STEPS_A_SET.size() && !standing.settled() && !effort.spent(); pass++) {
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
            if (cost >= standing.bestCost() || effort.spent()) return;
            open = 0;
            allShown &= sets.each(cost, this::ask) && open == 0;
        }
    }

    /** Whether another set of this cost is wanted. */
    private boolean ask(int[] set) {
        List<Integer> key = Arrays.stream(set).boxed().toList();
        if (cannot.contains(key)) return true;
        if (effort.spent()) {
            open++;
            return false;
        }
        Packing.Verdict verdict = decide(set);
        if (verdict == Packing.Verdict.CANNOT) cannot.add(key);
        if (verdict == Packing.Verdict.UNSETTLED) open++;
        return verdict != Packing.Verdict.FITS && open < mostOpen;
    }

    private Packing.Verdict decide(int[] set) {
        long before = effort.allowOnly(stepsASet);
        if (relaxation.columns().size() > MANY_PATTERNS) relaxation = relaxation();
        Cutting here = cutting.withBars(set);
        Packing.Outcome outcome = new Packing(here, relaxation, effort).decide();
        effort.allowAgain(before);
        if (outcome.verdict() == Packing.Verdict.FITS) standing.keep(outcome.bars());
        ruledOut.add(outcome.shown(), here.price);
        return outcome.verdict();
    }

    private Relaxation relaxation() {
        return new Relaxation(cutting.withBars(cutting.supply), pool, effort);
    }
}
