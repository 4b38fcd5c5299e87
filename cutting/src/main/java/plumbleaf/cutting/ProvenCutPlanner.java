package plumbleaf.cutting;

import java.util.List;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.money.Money;

/**
 * Least cost, and the proof of it: a plan and a bound that meet ({@link PlanSearch}). Where pieces of one slant may lap, a plan whose runs lap is asked for too, and
 * the cheaper stands.
 * Among plans of the same bars, the one with the fewest set-ups as far as {@link FewestSetUps} can show. Check: ProvenCutPlannerTest (all plans tried), GeneralSolverCheck (CBC, GLPK), CuttingStockCheck (published instances).
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
        Counted counted = new Counted(task, new Sizes(task, Sizes.Lapping.NONE), fewest, 0);
        CutAnswer plain = counted.answer();
        return Sizes.anyLaps(task) ? lapped(task, plain, counted.steps(), fewest) : plain;
    }

    /**
     * Pieces of one slant behind one another, where that saves a bar. A bound for all plans that lap, by counting half of every slanted cut for each piece; then
     * a plan whose runs lap as the saw can cut them. The cheaper plan stands, with that bound beside it.
     */
    private static CutAnswer lapped(CutTask task, CutAnswer plain, long before, boolean fewest) {
        Counted atMost = new Counted(task, new Sizes(task, Sizes.Lapping.AT_MOST), fewest, before);
        Money least = atMost.leastCost();
        boolean none = atMost.search.shownNone();
        CutAnswer best = plain;
        long steps = atMost.steps();
        Sizes sure = new Sizes(task, Sizes.Lapping.SURE);
        boolean enough = plain instanceof CutAnswer.Planned planned
                && planned.plan().cost().equals(least);
        if (!enough && !none && sure.cutting(false).everySizeFits()) {
            Counted runs = new Counted(task, sure, fewest, steps);
            CutAnswer run = runs.answer();
            steps = runs.steps();
            if (run instanceof CutAnswer.Planned laps && isLess(laps.plan(), plain)) best = run;
        }
        long all = steps;
        return best.match(
                planned -> new CutAnswer.Planned(planned.plan().withBound(least, all)),
                tooLong -> plain,
                tooFew -> new CutAnswer.TooFewBars(none, all));
    }

    private static boolean isLess(CutPlan plan, CutAnswer other) {
        return !(other instanceof CutAnswer.Planned planned)
                || plan.cost().compareTo(planned.plan().cost()) < 0;
    }

    /** A task with its pieces counted in one way of lapping, and its answer. */
    private static final class Counted {
        private final CutTask task;
        private final Sizes sizes;
        private final boolean fewest;
        private final boolean free;
        private final Cutting cutting;
        private final Effort effort;
        private final PlanSearch search;
        private final long before;

        /** @param before steps taken for the task in other ways of counting */
        Counted(CutTask task, Sizes sizes, boolean fewest, long before) {
            this.task = task;
            this.sizes = sizes;
            this.fewest = fewest;
            this.free = task.bars().stream().allMatch(bar -> bar.price().isZero());
            this.cutting = sizes.cutting(free);
            this.effort = new Effort(task.stepBudget());
            this.search = new PlanSearch(cutting, effort);
            this.before = before;
        }

        CutAnswer answer() {
            Standing standing = search.solve();
            if (!standing.hasPlan()) return new CutAnswer.TooFewBars(search.shownNone(), steps());
            return new CutAnswer.Planned(plan(standing));
        }

        /** What is shown of the cost, when the bars are not to be laid out. */
        Money leastCost() {
            return shown(search.solve());
        }

        long steps() {
            return before + effort.taken();
        }

        private Money shown(Standing standing) {
            return Money.cents(free ? 0 : Math.min(standing.bound(), standing.bestCost()));
        }

        private CutPlan plan(Standing standing) {
            FewestSetUps.Shown cut = fewest
                    ? FewestSetUps.of(cutting, SetUps.fewer(cutting, standing.best()))
                    : new FewestSetUps.Shown(standing.best(), standing.best().size(), 1);
            return new CutPlan(
                    task.stock(),
                    task.saw(),
                    SawOrder.bars(task, sizes, cut.plan()),
                    Money.cents(free ? 0 : standing.bestCost()),
                    shown(standing),
                    free || standing.settled(),
                    steps(),
                    sizes.isPlain() ? cut.least() : 1);
        }
    }
}
