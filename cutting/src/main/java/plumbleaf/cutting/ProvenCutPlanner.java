package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.money.Money;

/**
 * Least cost, and the proof of it. A bound from the {@link Relaxation}; a first plan by {@link Dive}; then every set of bars that costs no less than the bound
 * and less than the best plan is put to {@link Packing}, cheapest first, until one holds all pieces: everything cheaper has then been shown not to.
 * Among plans of these bars, the one with the fewest set-ups as far as {@link FewestSetUps} can show. Check: ProvenCutPlannerTest (all plans tried), GeneralSolverCheck (CBC, GLPK), CuttingStockCheck (published instances).
 */
public final class ProvenCutPlanner implements CutPlanner {
    @Override
    public CutAnswer plan(CutTask task) {
        return plan(task, true);
    }

    @Override
    public CutAnswer order(CutTask task) {
        return plan(task, false);
    }

    /** @param fewest whether the bars are to be cut in the fewest set-ups */
    private static CutAnswer plan(CutTask task, boolean fewest) {
        if (task.pieces().isEmpty())
            return new CutAnswer.Planned(
                    new CutPlan(task.stock(), task.saw(), List.of(), Money.ZERO, Money.ZERO, true, 0));
        long longest =
                task.bars().stream().mapToLong(task.saw()::usableNm).max().orElse(0);
        List<String> tooLong = task.pieces().stream()
                .filter(piece -> piece.longPointNm() > longest)
                .map(Piece::id)
                .toList();
        if (!tooLong.isEmpty()) return new CutAnswer.TooLong(tooLong, Math.max(0, longest));
        CutAnswer plain = new Search(task, new Sizes(task, Sizes.Lapping.NONE), fewest).answer();
        return Sizes.anyLaps(task) ? lapped(task, plain, fewest) : plain;
    }

    /**
     * Pieces of one slant behind one another, where that saves a bar. A bound for all plans that lap, by counting half of every slanted cut for each piece; then
     * a plan whose runs lap as the saw can cut them. The cheaper plan stands, with that bound beside it.
     */
    private static CutAnswer lapped(CutTask task, CutAnswer plain, boolean fewest) {
        Optional<Money> atMost = new Search(task, new Sizes(task, Sizes.Lapping.AT_MOST), fewest).leastCost();
        if (atMost.isEmpty()) return plain;
        Money least = atMost.get();
        if (plain instanceof CutAnswer.Planned planned && planned.plan().cost().equals(least)) return plain;
        Sizes sure = new Sizes(task, Sizes.Lapping.SURE);
        CutAnswer best = plain;
        if (sure.allFit(sure.cutting(false))) {
            CutAnswer run = new Search(task, sure, fewest).answer();
            if (run instanceof CutAnswer.Planned laps && isLess(laps.plan(), plain)) best = run;
        }
        return best.match(
                planned -> new CutAnswer.Planned(planned.plan().withBound(least)), tooLong -> plain, tooFew -> plain);
    }

    private static boolean isLess(CutPlan plan, CutAnswer other) {
        return !(other instanceof CutAnswer.Planned planned)
                || plan.cost().compareTo(planned.plan().cost()) < 0;
    }

    /** One task being worked on. */
    private static final class Search {
        /** Patterns listed for the search at first, and for the last. */
        private static final int POOL_FIRST = 60_000;

        private static final int POOL_LAST = 600_000;
        private static final int DIVES_FIRST = 4;
        private static final int DIVES_MORE = 24;

        private static final int MANY_SIZES = 120;

        /** With so many sizes it pays to look for a plan of nearly full bars before any fractions. */
        private static final int SIZES_TO_FILL = 12;

        /** A plan is of nearly full bars when all its waste is less than this part of one bar. */
        private static final int WASTE_SHARE = 50;

        /** A list of which a part like this must lie together was grown: what is left of it is small. */
        private static final int JOINS_TELL = 4;

        private static final int POOL_FULL = 300_000;

        /** Steps for a first look by shuffling: half a second. */
        private static final long SHUFFLE_FIRST = 20_000_000;

        /** With so many steps of the grid to the waste of a plan for each piece, rounding takes a quarter of it. */
        private static final double STEPS_FOR_WASTE = 2;

        private static final int COARSEST = 1_000;

        /** For a set of bars, when it is looked at first, again, and for the last time. */
        private static final List<Long> STEPS_A_SET = List.of(300_000L, 5_000_000L, Long.MAX_VALUE / 4);

        private final CutTask task;
        private final Cutting cutting;
        private final Sizes sizes;
        private final boolean free;
        private final boolean fewest;
        private final Effort effort;
        private final Set<Column> pool = new LinkedHashSet<>();
        private List<Column> best = List.of();
        private long bestCost = Long.MAX_VALUE;
        private long bound;

        Search(CutTask task, Sizes sizes, boolean fewest) {
            this.task = task;
            this.fewest = fewest;
            this.sizes = sizes;
            this.effort = new Effort(task.stepBudget());
            this.free = task.bars().stream().allMatch(bar -> bar.price().isZero());
            this.cutting = sizes.cutting(free);
        }

        /** The same task with rounded sizes, in what effort is left. */
        private Search(Search of, Cutting rounded) {
            this.task = of.task;
            this.fewest = of.fewest;
            this.sizes = of.sizes;
            this.effort = of.effort;
            this.free = of.free;
            this.cutting = rounded;
        }

        CutAnswer answer() {
            Optional<CutAnswer> none = solve();
            return none.isPresent() ? none.get() : new CutAnswer.Planned(plan());
        }

        /** What is shown of the cost when the bars are not to be laid out; nothing where there is no plan. */
        Optional<Money> leastCost() {
            return solve().isPresent() ? Optional.empty() : Optional.of(shown());
        }

        /** Why there is no plan, if there is none. */
        private Optional<CutAnswer> solve() {
            keep(OneByOne.fill(cutting, effort));
            bound = Bound.byVolume(cutting);
            if (bestCost <= bound) return Optional.empty();
            if (isTight() && isFullEverywhere()) return Optional.empty();
            if (isFine()) {
                if (cutting.kinds() == 1) keep(OneByOne.fillByPairs(cutting, effort));
                if (bestCost <= bound) return Optional.empty();
                onCoarseGrid();
                if (bestCost <= bound) return Optional.empty();
                effort.allowUpTo(effort.taken() + effort.left() / 4 * 3);
            }
            Optional<CutAnswer> none = exactly();
            effort.allowAll();
            if (effort.isTooFine() || (isFine() && bestCost > bound)) onGrid();
            return bestCost < Long.MAX_VALUE ? Optional.empty() : none;
        }

        /** Whether a plan at the bound would have hardly any waste. */
        private boolean isTight() {
            boolean oneKind = cutting.kinds() == 1 && cutting.supply[0] == Cutting.UNLIMITED && cutting.price[0] > 0;
            return oneKind && cutting.sizes() >= SIZES_TO_FILL && waste() * WASTE_SHARE <= cutting.room[0];
        }

        /** Of a plan at the bound, of bars of one kind. */
        private long waste() {
            return bound / cutting.price[0] * cutting.room[0] - cutting.volume();
        }

        /** Looks for a plan of nearly full bars, or shows that there is none. True when that settles it. */
        private boolean isFullEverywhere() {
            if (!Joining.suits(cutting)) return withoutWaste() || fullBars();
            long sought = bound;
            Joining joining = Joining.of(cutting, waste(), effort);
            if (joining.isImpossible()) bound += cutting.step();
            boolean grown = joining.joins() * JOINS_TELL >= cutting.pieces();
            if (!grown && withoutWaste()) return true;
            // A plan that may waste a bar more need not hold together what one at the first bound must.
            if (joining.joins() > 0 && bound == sought) joined(joining);
            return bestCost <= bound || fullBars();
        }

        /** Plans what is left when that lies together that must, which is a smaller task by as much. */
        private void joined(Joining joining) {
            Search rest = new Search(this, joining.rest());
            rest.solve();
            keep(joining.whole(rest.best));
            if (rest.bound > bound - joining.fullBars() * cutting.price[0]) bound += cutting.step();
        }

        /** Nothing wasted: a short look by shuffling, which mostly does; then what few patterns there are, one by one; then a longer look. */
        private boolean withoutWaste() {
            if (waste() > 0) return false;
            return shuffled(1, SHUFFLE_FIRST) || withoutFractions() || shuffled(2, effort.left() / 3);
        }

        private boolean shuffled(long seed, long steps) {
            if (!Shuffle.suits(cutting)) return false;
            keep(Shuffle.of(cutting, bound / cutting.price[0], seed, effort, steps));
            return bestCost <= bound;
        }

        /** Few patterns that fill a bar: tried piece by piece, which is sooner than by fractions. True when that settles it. */
        private boolean withoutFractions() {
            if (!FillTable.suits(cutting)) return false;
            effort.allowUpTo(effort.taken() + effort.left() / 2);
            PatternPool patterns = fullPatterns();
            if (!patterns.cutShort()) {
                List<Column> usual = FullBars.usual(cutting, patterns.columns(), bound / cutting.price[0]);
                FullBars.Found found = FullBars.of(cutting, usual, effort);
                keep(found.bars());
                boolean none = found.shown() && found.bars().isEmpty();
                if (none && usual.size() == patterns.columns().size()) bound += cutting.step();
            }
            effort.allowAll();
            return bestCost <= bound;
        }

        private PatternPool fullPatterns() {
            return PatternPool.of(
                    cutting, Bound.ofVolume(cutting), new Pricing(cutting, effort), bound, POOL_FULL, effort);
        }

        /**
         * Patterns that waste no more than a whole plan at the bound may are few where that is hardly anything: they are listed and searched at once, without the
         * worths that fractions would give. True when that settles it.
         */
        private boolean fullBars() {
            if (!FillTable.suits(cutting)) return false;
            effort.allowUpTo(effort.taken() + effort.left() / 2);
            PatternPool patterns = fullPatterns();
            if (!patterns.cutShort()) {
                PoolSearch search = new PoolSearch(cutting, patterns.columns(), effort);
                PoolSearch.Verdict verdict = search.search(bound, bound);
                if (verdict == PoolSearch.Verdict.FOUND) keep(search.best());
                if (verdict == PoolSearch.Verdict.NONE) bound += cutting.step();
            }
            effort.allowAll();
            return bestCost <= bound;
        }

        /** With so many sizes, none of them in round numbers, lists of fills may have no end. */
        private boolean isFine() {
            return cutting.sizes() > MANY_SIZES && !FillTable.suits(cutting);
        }

        /**
         * What a true plan costs at least, from sizes rounded down; and a plan, from sizes rounded up: each in half the effort that is left. The step is so small
         * against a bar that the two mostly meet.
         */
        private void onGrid() {
            effort.coarser();
            int steps = FillTable.finest(cutting.sizes());
            Cutting less = cutting.onGrid(steps, false);
            if (less.size[less.sizes() - 1] > 0) {
                effort.allowUpTo(effort.taken() + effort.left() / 2);
                Bound least = new Relaxation(less, new LinkedHashSet<>(), effort)
                        .solve(less.demand, less.supply, bestCost)
                        .bound();
                effort.allowAll();
                bound = Math.max(bound, least.roundedUp(cutting.step()));
            }
            if (bestCost > bound) planOn(cutting.onGrid(steps, true));
        }

        private void planOn(Cutting roundedUp) {
            if (!sizes.allFit(roundedUp)) return;
            Search rounded = new Search(this, roundedUp);
            rounded.bound = bound;
            if (rounded.exactly().isEmpty()) keep(rounded.best);
        }

        /**
         * Bars of one kind: a plan at the bound by lengths may waste so much, and what rounding up loses, half a step a piece, may take a part of it. The grid is as
         * coarse as that allows; it is tried first, in little of the effort, since the coarser it is the sooner a plan is found.
         */
        private void onCoarseGrid() {
            if (cutting.kinds() != 1 || cutting.supply[0] != Cutting.UNLIMITED || waste() <= 0) return;
            double steps = (double) cutting.room[0] * cutting.pieces() / waste() * STEPS_FOR_WASTE;
            if (steps > FillTable.finest(cutting.sizes())) return;
            effort.allowUpTo(effort.taken() + effort.left() / 6);
            planOn(cutting.onGrid((int) Math.max(steps, COARSEST), true));
            effort.allowAll();
        }

        /** To the last unit, as far as the effort goes. */
        private Optional<CutAnswer> exactly() {
            Relaxation relaxation = new Relaxation(cutting, pool, effort);
            Relaxation.Solved root = relaxation.solve(cutting.demand, cutting.supply, bestCost);
            bound = Math.max(bound, root.bound().roundedUp(cutting.step()));
            Dive dive = new Dive(cutting, relaxation, effort);
            dive(dive, 0, DIVES_FIRST);
            if (bestCost == Long.MAX_VALUE) {
                Packing.Outcome all = packAllOnHand();
                if (all.verdict() != Packing.Verdict.FITS)
                    return Optional.of(
                            new CutAnswer.TooFewBars(all.verdict() == Packing.Verdict.CANNOT, effort.taken()));
                keep(all.bars());
            }
            chooseOf(relaxation, root, dive);
            return Optional.empty();
        }

        private void chooseOf(Relaxation relaxation, Relaxation.Solved root, Dive dive) {
            boolean several = cutting.kinds() > 1;
            if (several) setsOfBars(relaxation, root);
            boolean settled = open() && choose(relaxation, root.bound(), POOL_FIRST);
            if (!settled) dive(dive, DIVES_FIRST, DIVES_MORE);
            if (open() && !settled) settled = choose(relaxation, root.bound(), POOL_LAST);
            if (!settled && !several) setsOfBars(relaxation, root);
        }

        private void setsOfBars(Relaxation relaxation, Relaxation.Solved root) {
            if (!open()) return;
            pool.addAll(relaxation.columns());
            settle(root.bound());
        }

        private boolean open() {
            return bestCost > bound && !effort.spent();
        }

        private void dive(Dive dive, int from, int to) {
            for (int number = from; number < to && open(); number++) {
                long most = bestCost == Long.MAX_VALUE ? bestCost : bestCost - cutting.step();
                keep(dive.down(number, most));
            }
        }

        /** Lists every pattern that a better plan can hold and searches them; true when that settles it. */
        private boolean choose(Relaxation relaxation, Bound worths, int most) {
            if (worths.isNone()) return false;
            long target = bestCost - cutting.step();
            PatternPool patterns = PatternPool.of(cutting, worths, relaxation.pricing(), target, most, effort);
            if (patterns.cutShort()) return false;
            PoolSearch search = new PoolSearch(cutting, patterns.columns(), effort);
            PoolSearch.Verdict verdict = search.search(target, bound);
            if (verdict == PoolSearch.Verdict.FOUND) keep(search.best());
            if (!search.isBest()) return false;
            bound = bestCost;
            return true;
        }

        private Packing.Outcome packAllOnHand() {
            int[] bars = cutting.supply.clone();
            for (int k = 0; k < bars.length; k++) bars[k] = Math.min(bars[k], cutting.pieces());
            Cutting here = cutting.withBars(bars);
            return new Packing(here, new Relaxation(here, pool, effort), effort).decide();
        }

        /**
         * Puts every set of bars that costs less than the best plan to the test, cheapest first: by volume, by worths that ruled out another set, by fractions,
         * by dives and by search, with few steps at first and with more for those left open.
         */
        private void settle(Bound worths) {
            BarCounts.Listed listed = BarCounts.between(cutting, bound, bestCost, effort);
            SetsRuledOut ruledOut = new SetsRuledOut(cutting);
            ruledOut.add(worths, cutting.price, cutting.supply);
            Relaxation relaxation = new Relaxation(cutting.withBars(cutting.supply), pool, effort);
            List<BarCounts.Counted> open = listed.sets();
            for (long steps : STEPS_A_SET) {
                List<BarCounts.Counted> stillOpen = new ArrayList<>();
                for (BarCounts.Counted set : open) {
                    if (set.cost() >= bestCost || ruledOut.has(set.bars())) continue;
                    if (effort.spent() || ask(set, relaxation, ruledOut, steps) == Packing.Verdict.UNSETTLED)
                        stillOpen.add(set);
                }
                open = stillOpen;
            }
            long shown = bestCost;
            for (BarCounts.Counted set : open) {
                if (set.cost() < shown) shown = set.cost();
            }
            if (listed.complete()) bound = Math.max(bound, shown);
        }

        private Packing.Verdict ask(BarCounts.Counted set, Relaxation relaxation, SetsRuledOut ruledOut, long steps) {
            long before = effort.taken();
            effort.allowUpTo(before + steps);
            Cutting here = cutting.withBars(set.asArray());
            Packing.Outcome outcome = new Packing(here, relaxation, effort).decide();
            effort.allowAll();
            if (outcome.verdict() == Packing.Verdict.FITS) keep(outcome.bars());
            ruledOut.add(outcome.shown(), here.price, here.supply);
            return outcome.verdict();
        }

        private void keep(List<Column> bars) {
            if (bars.isEmpty()) return;
            long cost = 0;
            for (Column bar : bars) cost += cutting.price[bar.kind];
            if (cost >= bestCost) return;
            bestCost = cost;
            best = List.copyOf(bars);
        }

        private Money shown() {
            return Money.cents(free ? 0 : Math.min(bound, bestCost));
        }

        private CutPlan plan() {
            boolean proven = bestCost <= bound;
            Money cost = Money.cents(free ? 0 : bestCost);
            FewestSetUps.Shown cut = fewest
                    ? FewestSetUps.of(cutting, SetUps.fewer(cutting, best))
                    : new FewestSetUps.Shown(best, best.size(), 1);
            return new CutPlan(
                    task.stock(),
                    task.saw(),
                    SawOrder.bars(task, sizes, cut.plan()),
                    cost,
                    shown(),
                    free || proven,
                    effort.taken(),
                    sizes.isPlain() ? cut.least() : 1);
        }
    }
}
