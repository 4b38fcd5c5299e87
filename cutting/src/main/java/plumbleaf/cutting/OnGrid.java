package plumbleaf.cutting;

import java.util.LinkedHashSet;

/**
 * Sizes too many and too fine for tables, put on a grid: rounded down they show what a plan costs at least, rounded up they give one. The step is so small against
 * a bar that the two mostly meet.
 */
final class OnGrid {
    private static final int MANY_SIZES = 120;

    /** With so many steps of the grid to the waste of a plan for each piece, rounding takes a quarter of it. */
    private static final double STEPS_FOR_WASTE = 2;

    private static final int COARSEST = 1_000;

    private final Cutting cutting;
    private final Standing standing;
    private final Effort effort;

    OnGrid(Cutting cutting, Standing standing, Effort effort) {
        this.cutting = cutting;
        this.standing = standing;
        this.effort = effort;
    }

    /** With so many sizes, none of them in round numbers, lists of fills may have no end. */
    static boolean isFine(Cutting cutting) {
        return cutting.sizes() > MANY_SIZES && !FillTable.suits(cutting);
    }

    /**
     * Bars of one kind: a plan at the bound by lengths may waste so much, and what rounding up loses, half a step a piece, may take a part of it. The grid is as
     * coarse as that allows; it is tried first, in little of the effort, since the coarser it is the sooner a plan is found.
     */
    void coarsely() {
        if (!cutting.isOneKind()) return;
        long waste = NearlyFull.waste(cutting, standing);
        if (waste <= 0) return;
        double steps = (double) cutting.room[0] * cutting.pieces() / waste * STEPS_FOR_WASTE;
        if (steps > FillTable.finest(cutting.sizes())) return;
        long before = effort.allowOnly(effort.left() / 6);
        planOn((int) Math.max(steps, COARSEST));
        effort.allowAgain(before);
    }

    /** The bound and then a plan, each in half the effort that is left, on the finest grid a table can have. */
    void finely() {
        effort.coarser();
        int steps = FillTable.finest(cutting.sizes());
        Cutting less = cutting.onGrid(steps, false);
        if (less.size[less.sizes() - 1] > 0) {
            long before = effort.allowOnly(effort.left() / 2);
            Bound least = new Relaxation(less, new LinkedHashSet<>(), effort)
                    .solve(less.demand, less.supply, standing.bestCost())
                    .bound();
            effort.allowAgain(before);
            standing.atLeast(least.roundedUp(cutting.step()));
        }
        if (!standing.settled()) planOn(steps);
    }

    private void planOn(int steps) {
        Cutting roundedUp = cutting.onGrid(steps, true);
        if (!roundedUp.everySizeFits()) return;
        standing.keep(
                new PlanSearch(roundedUp, effort).byFractions(standing.bound()).best());
    }
}
