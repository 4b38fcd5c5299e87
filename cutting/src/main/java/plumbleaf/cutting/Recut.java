package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts a few dozen pieces anew with all others left where they are: first those that the whole parts of the fractions leave over, then, again and again, those of some bars
 * of the best plan, the bars that lose most among them. So few pieces have few patterns that lose next to nothing, and these are tried one by one ({@link FullBars}),
 * which meets a plan at the bound where dives end a cent beside it. It finds a plan or nothing, and proves nothing.
 * Source: G. Scheithauer and J. Terno, Operations Research Letters 20 (1997) 93-100, for what whole parts leave over; P. Shaw, in Principles and Practice of Constraint
 * Programming (1998) 417-431, for cutting some bars anew; both from memory. Check: RecutTest.
 */
final class Recut {
    /** How often what fractions leave is planned, each time with other bars let go beside it, and with the most of them. */
    private static final int TURNS = 6;

    private static final int BARS_MORE = 16;

    /** Patterns tried for it at the most, and steps for each cost. */
    private static final int PATTERNS = 20_000;

    private static final long STEPS_A_COST = 3_000_000;

    /** How often some bars are cut anew, and steps each time. */
    private static final int TRIALS = 3_000;

    private static final long STEPS_A_TRIAL = 30_000;

    private static final long STEPS_TO_LIST = 120_000;

    /** Pieces cut anew at first; more while all is tried in time, fewer while it is not. */
    private static final double PIECES = 34;

    private static final double FEWEST_PIECES = 12;
    private static final double MORE = 0.25;
    private static final double FEWER = 0.5;

    /** Of the effort left, for all of it. */
    private static final int PART_OF_EFFORT = 3;

    /** Of a step of cost: what loses less is as good as full. */
    private static final int HARDLY = 50;

    private final Cutting cutting;
    private final Standing standing;
    private final Bound worths;
    private final Pricing pricing;
    private final Effort effort;
    private final long step;
    private long seed = 1;

    private Recut(Cutting cutting, Standing standing, Bound worths, Pricing pricing, Effort effort) {
        this.cutting = cutting;
        this.standing = standing;
        this.worths = worths;
        this.pricing = pricing;
        this.effort = effort;
        this.step = cutting.step();
    }

    /** How trying came out. */
    private enum End {
        FOUND,
        NONE,
        STOPPED
    }

    /**
     * @param root the fractions of all bars; {@code pricing} of the same bars
     */
    static void look(Cutting cutting, Standing standing, Relaxation.Solved root, Pricing pricing, Effort effort) {
        if (root.bound().isNone() || !pricing.hasTable() || !standing.hasPlan()) return;
        Recut recut = new Recut(cutting, standing, root.bound(), pricing, effort);
        long before = effort.allowOnly(effort.left() / PART_OF_EFFORT);
        recut.whatFractionsLeave(root.shares());
        recut.someBars();
        effort.allowAgain(before);
    }

    private boolean open() {
        return !standing.settled() && !effort.spent();
    }

    private void whatFractionsLeave(List<Relaxation.Share> shares) {
        List<Column> whole = wholeParts(shares);
        for (int turn = 0; turn < TURNS && open(); turn++) {
            List<Column> kept = new ArrayList<>(whole);
            for (int n = turn * 5 % BARS_MORE; n > 0 && !kept.isEmpty(); n--) kept.remove(picked(kept.size()));
            leaveLess(kept);
        }
    }

    /** With as many patterns as can be tried, those that lose least; the plan gets cheaper as long as they hold another in time. */
    private void leaveLess(List<Column> kept) {
        Left left = new Left(kept);
        PatternPool patterns = left.patterns(standing.bound(), STEPS_A_COST);
        for (long above = 1; !patterns.cutShort(); above += above / 2 + 1) {
            long target = standing.bound() + above * step;
            if (target >= standing.bestCost()) break;
            PatternPool more = left.patterns(target, STEPS_A_COST);
            if (more.cutShort()) break;
            patterns = more;
        }
        End end = End.FOUND;
        while (end == End.FOUND && open()) end = left.cut(patterns, standing.bestCost() - step, STEPS_A_COST);
    }

    private List<Column> wholeParts(List<Relaxation.Share> shares) {
        int[] demand = cutting.demand.clone();
        int[] supply = cutting.supply.clone();
        List<Column> whole = new ArrayList<>();
        for (Relaxation.Share share : shares) {
            for (long n = (long) Math.floor(share.times() + PoolProgram.WHOLE); n > 0; n--) {
                Column bar = share.column().trimmedTo(demand);
                if (bar.isEmpty() || !bar.within(demand, supply)) break;
                bar.takeFrom(demand);
                if (supply[bar.kind] != Cutting.UNLIMITED) supply[bar.kind]--;
                whole.add(bar);
            }
        }
        return whole;
    }

    private void someBars() {
        double pieces = PIECES;
        for (int trial = 0; trial < TRIALS && open(); trial++) {
            Left left = new Left(allBut((int) pieces));
            long target = standing.bestCost() - step;
            End end = left.cut(left.patterns(target, STEPS_TO_LIST), target, STEPS_A_TRIAL);
            if (end == End.NONE) pieces += MORE;
            else if (end != End.FOUND) pieces = Math.max(FEWEST_PIECES, pieces - FEWER);
        }
    }

    /** Of the best plan all bars but some, picked by chance: as many of those that lose as lose a step of cost together, and others until there are so many pieces. */
    private List<Column> allBut(int pieces) {
        List<Column> bars = new ArrayList<>(standing.best());
        for (int n = bars.size() - 1; n > 0; n--) {
            int other = picked(n + 1);
            bars.set(other, bars.set(n, bars.get(other)));
        }
        long enough = step * worths.scale;
        long[] loss = new long[bars.size()];
        for (int n = 0; n < loss.length; n++) loss[n] = worths.loss(cutting.price, bars.get(n));
        boolean[] goes = new boolean[loss.length];
        long lost = 0;
        int held = 0;
        for (int pass = 0; pass < 2; pass++) {
            for (int n = 0; n < goes.length; n++) {
                boolean wanted = lost < enough ? pass > 0 || loss[n] * HARDLY >= enough : pass > 0 && held < pieces;
                if (goes[n] || !wanted) continue;
                goes[n] = true;
                lost += loss[n];
                held += Arrays.stream(bars.get(n).times).sum();
            }
        }
        effort.add(bars.size());
        List<Column> kept = new ArrayList<>();
        for (int n = 0; n < goes.length; n++) if (!goes[n]) kept.add(bars.get(n));
        return kept;
    }

    /** What some bars leave. */
    private final class Left {
        private final List<Column> kept;
        private final long cost;
        private final Cutting rest;
        private final Bound worth;

        Left(List<Column> kept) {
            this.kept = kept;
            this.cost = kept.stream().mapToLong(bar -> cutting.price[bar.kind]).sum();
            this.rest = cutting.without(kept);
            this.worth = worths.without(kept);
        }

        /** Those that a plan of at most so much can hold beside these bars. */
        PatternPool patterns(long target, long steps) {
            long before = effort.allowOnly(steps);
            PatternPool patterns = PatternPool.of(rest, worth, pricing, target - cost, PATTERNS, effort);
            effort.allowAgain(before);
            return patterns;
        }

        /** Keeps the plan where there is one of at most so much. */
        End cut(PatternPool patterns, long target, long steps) {
            if (patterns.cutShort()) return End.STOPPED;
            List<Column> columns = patterns.columns();
            long[] loss = columns.stream()
                    .mapToLong(column -> worth.loss(cutting.price, column))
                    .toArray();
            long mayLose = (target - cost) * worth.scale - worth.scaled;
            long before = effort.allowOnly(steps);
            FullBars.Found found = FullBars.losing(rest, columns, loss, mayLose, effort);
            effort.allowAgain(before);
            if (found.bars().isEmpty()) return found.shown() ? End.NONE : End.STOPPED;
            if (!areAtHand(found.bars())) return End.STOPPED;
            List<Column> all = new ArrayList<>(kept);
            all.addAll(found.bars());
            standing.keep(all);
            return End.FOUND;
        }

        /** Trying patterns looks at pieces alone. */
        private boolean areAtHand(List<Column> bars) {
            int[] used = new int[rest.kinds()];
            for (Column bar : bars) {
                if (++used[bar.kind] > rest.supply[bar.kind]) return false;
            }
            return true;
        }
    }

    private int picked(int from) {
        seed = seed * 6364136223846793005L + 1442695040888963407L;
        return (int) ((seed >>> 33) % from);
    }
}
