package plumbleaf.cutting;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * The order of work on one task: a plan bar by bar and the bound by lengths; nearly full bars where there is hardly any waste; then fractions, dives, and the list of
 * all patterns that a better plan can hold, searched; with several kinds of bar from the bound up ({@link RisingCost}) and their sets one by one. Each step ends the work where plan and bound meet.
 */
final class PlanSearch {
    /** Patterns listed for the search at first, and for the last. */
    private static final int POOL_FIRST = 60_000;

    private static final int POOL_LAST = 600_000;

    private static final int DIVES_FIRST = 4;
    private static final int DIVES_MORE = 24;

    /** With several kinds of bar a plan at the bound mostly is there, if a dive ends in it. */
    private static final int DIVES_MOST = 200;

    /** Of the effort left, for the most of them. */
    private static final int PART_FOR_DIVES = 8;

    /** Steps for a glance at sets of bars: where few bars do, hardly any cost comes out as their sum, and the next that does is the least. */
    private static final long SETS_AT_A_GLANCE = 500_000;

    /** Steps for a first look at them. */
    private static final long SETS_FIRST = 20_000_000;

    private final Cutting cutting;
    private final Effort effort;
    private final Standing standing;
    private final Set<Column> pool = new LinkedHashSet<>();
    private boolean shownNone;

    /** @param cutting with at least one piece: a plan of none is no plan */
    PlanSearch(Cutting cutting, Effort effort) {
        if (cutting.sizes() == 0)
            throw new IllegalArgumentException("A cutting without pieces has no plan to look for");
        this.cutting = cutting;
        this.effort = effort;
        this.standing = new Standing(cutting);
    }

    /** Without a plan in the end, whether it is shown that the bars at hand do not do. */
    boolean shownNone() {
        return shownNone;
    }

    Standing solve() {
        standing.keep(OneByOne.fill(cutting, effort));
        standing.atLeast(Bound.byVolume(cutting));
        if (cutting.kinds() == 1) standing.atLeast(DualFunctions.bars(cutting, effort) * cutting.price[0]);
        if (!standing.settled()) NearlyFull.look(cutting, standing, effort);
        if (standing.settled()) return standing;
        boolean fine = OnGrid.isFine(cutting);
        OnGrid grid = new OnGrid(cutting, standing, effort);
        if (fine) {
            if (cutting.kinds() == 1) standing.keep(OneByOne.fillByPairs(cutting, effort));
            if (!standing.settled()) grid.coarsely();
            if (standing.settled()) return standing;
        }
        long before = effort.allowOnly(fine ? effort.left() / 6 * 5 : effort.left());
        byFractions();
        effort.allowAgain(before);
        if (effort.isTooFine() || (fine && !standing.settled())) grid.finely();
        return standing;
    }

    /** To the last unit, as far as the effort goes, where so much is known to be needed. */
    Standing byFractions(long atLeast) {
        standing.atLeast(atLeast);
        byFractions();
        return standing;
    }

    private void byFractions() {
        Relaxation relaxation = new Relaxation(cutting, pool, effort);
        Relaxation.Solved root = relaxation.solve(cutting.demand, cutting.supply, standing.bestCost());
        standing.atLeast(root.bound().roundedUp(cutting.step()));
        if (open()) NearlyFull.lookLonger(cutting, standing, effort);
        Dive dive = new Dive(cutting, relaxation, effort);
        dive(dive, 0, DIVES_FIRST);
        if (!standing.hasPlan() && !allOnHandDo()) return;
        boolean several = cutting.kinds() > 1;
        if (several) ofSeveralKinds(relaxation, root, dive);
        boolean settled = open() && choose(relaxation, root.bound(), POOL_FIRST);
        if (!settled && !several) dive(dive, DIVES_FIRST, DIVES_MORE);
        if (open() && !settled) settled = choose(relaxation, root.bound(), POOL_LAST);
        if (!settled && !several) setsOfBars(relaxation, root);
    }

    /** Each way briefly, then for longer. */
    private void ofSeveralKinds(Relaxation relaxation, Relaxation.Solved root, Dive dive) {
        setsOfBars(relaxation, root, SETS_AT_A_GLANCE);
        risingCost(relaxation, root.bound(), RisingCost.Look.BRIEF);
        setsOfBars(relaxation, root, SETS_FIRST);
        dive(dive, DIVES_FIRST, DIVES_MORE);
        if (open()) Recut.look(cutting, standing, root, relaxation.pricing(), effort);
        risingCost(relaxation, root.bound(), RisingCost.Look.LONGER);
        setsOfBars(relaxation, root);
        long before = effort.allowOnly(effort.left() / PART_FOR_DIVES);
        dive(dive, DIVES_MORE, DIVES_MOST);
        effort.allowAgain(before);
        risingCost(relaxation, root.bound(), RisingCost.Look.LONG);
    }

    private void risingCost(Relaxation relaxation, Bound worths, RisingCost.Look look) {
        if (open()) RisingCost.look(cutting, standing, worths, relaxation.pricing(), look, effort);
    }

    private boolean open() {
        return !standing.settled() && !effort.spent();
    }

    private void dive(Dive dive, int from, int to) {
        for (int number = from; number < to && open(); number++)
            standing.keep(
                    dive.down(number, standing.hasPlan() ? standing.bestCost() - cutting.step() : Long.MAX_VALUE));
    }

    private boolean allOnHandDo() {
        int[] bars = cutting.supply.clone();
        for (int k = 0; k < bars.length; k++) bars[k] = Math.min(bars[k], cutting.pieces());
        Cutting here = cutting.withBars(bars);
        Packing.Outcome all = new Packing(here, new Relaxation(here, pool, effort), effort).decide();
        shownNone = all.verdict() == Packing.Verdict.CANNOT;
        if (all.verdict() == Packing.Verdict.FITS) standing.keep(all.bars());
        return standing.hasPlan();
    }

    /** Lists every pattern that a better plan can hold and searches them; true when that settles it. */
    private boolean choose(Relaxation relaxation, Bound worths, int most) {
        if (worths.isNone()) return false;
        long target = standing.bestCost() - cutting.step();
        PatternPool patterns = PatternPool.of(cutting, worths, relaxation.pricing(), target, most, effort);
        if (patterns.cutShort()) return false;
        PoolSearch search = new PoolSearch(cutting, patterns.columns(), effort);
        PoolSearch.Verdict verdict = search.search(target, standing.bound());
        if (verdict == PoolSearch.Verdict.FOUND) standing.keep(search.best());
        if (!search.isBest()) return false;
        standing.nothingBetter();
        return true;
    }

    private void setsOfBars(Relaxation relaxation, Relaxation.Solved root, long steps) {
        long before = effort.allowOnly(steps);
        setsOfBars(relaxation, root);
        effort.allowAgain(before);
    }

    private void setsOfBars(Relaxation relaxation, Relaxation.Solved root) {
        if (!open()) return;
        pool.addAll(relaxation.columns());
        SetsOfBars.settle(cutting, standing, root.bound(), pool, effort);
    }
}
