package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

/**
 * Least cost, and the proof of it. A bound from the {@link Relaxation}; a first plan by {@link Dive}; then every set of bars that costs no less than the bound
 * and less than the best plan is put to {@link Packing}, cheapest first, until one holds all pieces: everything cheaper has then been shown not to.
 * Check: ProvenCutPlannerTest (all plans tried), GeneralSolverCheck (CBC, GLPK), CuttingStockCheck (published instances).
 */
public final class ProvenCutPlanner implements CutPlanner {
    /** Each set of bars gets this share of the steps left before the next is looked at. */
    private static final int SHARES = 8;

    @Override
    public CutAnswer plan(CutTask task) {
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
        return new Search(task).answer();
    }

    /** One task being worked on. */
    private static final class Search {
        private final CutTask task;
        private final Cutting cutting;
        private final boolean free;
        private final Effort effort;
        private final Set<Pattern> pool = new LinkedHashSet<>();
        private List<Pattern> best = List.of();
        private long bestCost = Long.MAX_VALUE;
        private long bound;

        Search(CutTask task) {
            this.task = task;
            this.effort = new Effort(task.stepBudget());
            this.free = task.bars().stream().allMatch(bar -> bar.price().isZero());
            this.cutting = cutting(task, free);
        }

        CutAnswer answer() {
            Relaxation relaxation = new Relaxation(cutting, pool, effort);
            Relaxation.Solved root = relaxation.solve(cutting.demand, cutting.supply, Long.MAX_VALUE);
            bound = Math.max(0, root.bound());
            keep(OneByOne.fill(cutting, effort));
            List<Pattern> dived = new ArrayList<>();
            if (bestCost > bound && Dive.down(cutting, relaxation, effort, dived)) keep(dived);
            if (bestCost == Long.MAX_VALUE) {
                Packing.Outcome all = packAllOnHand();
                if (all.verdict() != Packing.Verdict.FITS)
                    return new CutAnswer.TooFewBars(all.verdict() == Packing.Verdict.CANNOT, effort.taken());
                keep(all.bars());
            }
            if (bestCost > bound) settle();
            return new CutAnswer.Planned(plan());
        }

        private Packing.Outcome packAllOnHand() {
            int[] bars = cutting.supply.clone();
            for (int k = 0; k < bars.length; k++) bars[k] = Math.min(bars[k], cutting.pieces());
            return new Packing(cutting.withBars(bars), pool, effort).decide();
        }

        /** Puts the sets of bars to the test, each with a share of the steps at first, then those left open with all. */
        private void settle() {
            BarCounts.Listed listed = BarCounts.between(cutting, bound, bestCost, effort);
            List<BarCounts.Counted> open = new ArrayList<>();
            for (BarCounts.Counted set : listed.sets()) {
                if (set.cost() >= bestCost || effort.spent()) {
                    if (set.cost() < bestCost) open.add(set);
                    continue;
                }
                if (ask(set, effort.share(SHARES)) == Packing.Verdict.UNSETTLED) open.add(set);
            }
            List<BarCounts.Counted> stillOpen = new ArrayList<>();
            for (BarCounts.Counted set : open) {
                if (set.cost() >= bestCost) continue;
                if (effort.spent() || ask(set, effort.share(1)) == Packing.Verdict.UNSETTLED) stillOpen.add(set);
            }
            long shown = bestCost;
            for (BarCounts.Counted set : stillOpen) shown = Math.min(shown, set.cost());
            if (listed.complete()) bound = Math.max(bound, shown);
        }

        private Packing.Verdict ask(BarCounts.Counted set, Effort share) {
            Packing.Outcome outcome = new Packing(cutting.withBars(set.asArray()), pool, share).decide();
            effort.add(share.taken());
            if (outcome.verdict() == Packing.Verdict.FITS) keep(outcome.bars());
            return outcome.verdict();
        }

        private void keep(List<Pattern> bars) {
            if (bars.isEmpty()) return;
            long cost = 0;
            for (Pattern bar : bars) cost += cutting.price[bar.kind()];
            if (cost >= bestCost) return;
            bestCost = cost;
            best = List.copyOf(bars);
        }

        private CutPlan plan() {
            boolean proven = bestCost <= bound;
            Money cost = Money.cents(free ? 0 : bestCost);
            Money shown = Money.cents(free ? 0 : Math.min(bound, bestCost));
            return new CutPlan(
                    task.stock(),
                    task.saw(),
                    SawOrder.bars(task, sizes(task), SetUps.fewer(cutting, best)),
                    cost,
                    shown,
                    free || proven,
                    effort.taken());
        }
    }

    /** The different lengths, long to short. */
    private static List<Long> sizes(CutTask task) {
        return List.copyOf(counted(task).descendingMap().keySet());
    }

    private static NavigableMap<Long, Integer> counted(CutTask task) {
        NavigableMap<Long, Integer> counts = new TreeMap<>();
        for (Piece piece : task.pieces()) counts.merge(piece.longPointNm(), 1, Integer::sum);
        return counts;
    }

    /** A kerf goes with every piece, and one more with the bar: n pieces need n - 1. Bars that all cost nothing are told apart by length. */
    private static Cutting cutting(CutTask task, boolean free) {
        Map<Long, Integer> counts = counted(task);
        List<Long> lengths = sizes(task);
        long kerf = task.saw().kerfNm();
        int kinds = task.bars().size();
        long[] room = new long[kinds];
        long[] price = new long[kinds];
        int[] supply = new int[kinds];
        for (int k = 0; k < kinds; k++) {
            StockBar bar = task.bars().get(k);
            room[k] = Math.max(0, task.saw().usableNm(bar) + kerf);
            price[k] =
                    free ? Math.max(1, bar.lengthNm() / 1_000_000) : bar.price().cents();
            supply[k] = bar.supply().match(asMany -> Cutting.UNLIMITED, Supply.AtMost::bars);
            if (price[k] == 0) supply[k] = Math.min(supply[k], task.pieces().size());
        }
        return new Cutting(
                lengths.stream().mapToLong(length -> length + kerf).toArray(),
                lengths.stream()
                        .mapToInt(length -> counts.getOrDefault(length, 0))
                        .toArray(),
                room,
                price,
                supply);
    }
}
