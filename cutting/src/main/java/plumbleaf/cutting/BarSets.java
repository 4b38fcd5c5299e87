package plumbleaf.cutting;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Comparator;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The sets of bars that come to just so much, cost by cost. With mixed prices the cost of a set jumps, so the least possible cost is settled here, before any pattern
 * is looked at. How much bars of some kinds hold at the most for just so much is kept as a table, as far as there is room for one; sets that cannot hold the pieces
 * are left out by it and by {@link SetsRuledOut}, also by what that learns meanwhile. Bars that cost nothing are always all there.
 * Method: R. Bellman, Dynamic Programming (1957), with a search back through the table. Check: BarSetsTest.
 */
final class BarSets {
    /** Of the table: sixteen megabytes. Dearer sets are not looked up in it. */
    private static final long MOST_CELLS = 2_000_000;

    /** For the sets of one cost. */
    private static final long MOST_LOOKS = 2_000_000;

    /** Looked up in the table. */
    private static final int COSTS_A_STEP = 64;

    /** Of the quotient of what is held and price, on the safe side. */
    private static final double ROUNDING = 1e-9;

    /** No bars of these kinds come to just this cost. */
    private static final long NONE = -1;

    private final Cutting cutting;
    private final SetsRuledOut ruledOut;
    private final Effort effort;
    private final long step;
    private final int[] most;
    private final long[] hold;
    private final long needed;

    /** Kinds that cost something, those that hold most for the cent first. */
    private final int[] kinds;

    /** For each place in {@link #kinds} and each cost, in steps, the most that the kinds from there on hold for it. */
    private final long[][] table;

    /** What all bars there may be cost, in steps. */
    private final long dearest;

    private final int[] bars;
    private long looks;

    /**
     * @param hold the most a bar of each kind holds, by length or by worths
     * @param needed what all pieces come to
     * @param below no set of this cost or more is asked about
     */
    BarSets(Cutting cutting, long[] hold, long needed, long below, SetsRuledOut ruledOut, Effort effort) {
        this.cutting = cutting;
        this.ruledOut = ruledOut;
        this.effort = effort;
        this.step = cutting.step();
        // more than all pieces need is of no use to a set
        this.hold = Arrays.stream(hold).map(each -> Math.min(each, needed)).toArray();
        this.needed = needed;
        this.bars = new int[cutting.kinds()];
        this.most = IntStream.range(0, bars.length).map(k -> most(cutting, k)).toArray();
        for (int k = 0; k < bars.length; k++) if (cutting.price[k] == 0) bars[k] = most[k];
        this.kinds = IntStream.range(0, bars.length)
                .filter(k -> cutting.price[k] > 0 && most[k] > 0 && hold[k] > 0)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(k -> -(double) hold[k] / cutting.price[k])
                        .thenComparing(k -> k))
                .mapToInt(k -> k)
                .toArray();
        ruledOut.choosingFrom(kinds);
        long all = 0;
        for (int k : kinds) all += cutting.price[k] / step * most[k];
        this.dearest = all;
        int costs = (int) Math.min(Math.min(below / step, all) + 1, MOST_CELLS / (kinds.length + 1));
        this.table = new long[kinds.length + 1][costs];
        Arrays.fill(table[kinds.length], NONE);
        table[kinds.length][0] = 0;
        for (int place = kinds.length - 1; place >= 0; place--) raise(place);
    }

    /** Bars of a kind that a plan can use. */
    private static int most(Cutting cutting, int kind) {
        return Math.max(0, Math.min(cutting.supply[kind], cutting.pieces()));
    }

    /** Whether sums of what all bars there may be hold, each as much as is needed, are whole numbers of the machine. */
    static boolean holds(Cutting cutting, BigInteger needed) {
        long bars = 1;
        for (int k = 0; k < cutting.kinds(); k++) bars += most(cutting, k);
        return needed.multiply(BigInteger.valueOf(bars)).bitLength() < Long.SIZE;
    }

    /** One kind more: as many bars as there are, in parts of one, two, four and the rest. */
    private void raise(int place) {
        long[] here = table[place];
        System.arraycopy(table[place + 1], 0, here, 0, here.length);
        int kind = kinds[place];
        int rest = most[kind];
        for (int part = 1; rest > 0; part *= 2) {
            int times = Math.min(part, rest);
            rest -= times;
            long by = cutting.price[kind] / step * times;
            if (by >= here.length) break;
            for (int cost = here.length - 1; cost >= by; cost--) {
                long before = here[(int) (cost - by)];
                if (before != NONE) here[cost] = Math.max(here[cost], Math.min(needed, before + hold[kind] * times));
            }
            effort.add(here.length / 64 + 1);
        }
    }

    /** The least cost of any set, hopeless or not, from this one on and below the other; or the other. Where the effort runs out on the way, how far it came. */
    long costFrom(long least, long below) {
        long cost = -Math.floorDiv(-least, step);
        long from = cost;
        long past = Math.min(dearest + 1, -Math.floorDiv(-below, step));
        while (cost < past && atMost(0, cost) == NONE && !effort.spent()) {
            if ((++cost - from) % COSTS_A_STEP == 0) effort.add(1);
        }
        return cost < past ? cost * step : below;
    }

    /**
     * All sets of this cost that are not ruled out, those with most of the bars that hold most for the cent first.
     *
     * @param goOn asked for each set; false when no more are wanted
     * @return false where too many would have to be looked at, or the effort ran out
     */
    boolean each(long cost, Predicate<int[]> goOn) {
        looks = 0;
        long held = 0;
        for (int k = 0; k < bars.length; k++) if (cutting.price[k] == 0) held += hold[k] * bars[k];
        choose(0, cost / step, held, goOn);
        for (int k : kinds) bars[k] = 0;
        effort.add(looks / 2 + 1);
        return looks < MOST_LOOKS && !effort.spent();
    }

    private long atMost(int place, long cost) {
        if (cost < table[place].length) return table[place][(int) cost];
        if (place == kinds.length) return NONE;
        double most = (double) hold[kinds[place]] * step / cutting.price[kinds[place]] * cost * (1 + ROUNDING);
        return most >= needed ? needed : (long) most + 1;
    }

    /** False when no more are wanted. */
    private boolean choose(int place, long left, long held, Predicate<int[]> goOn) {
        if (++looks >= MOST_LOOKS || effort.spent()) return false;
        long more = atMost(place, left);
        if (more == NONE || held + more < needed || ruledOut.isHopeless(bars, place, left * step)) return true;
        if (place == kinds.length) return ruledOut.has(bars) || goOn.test(bars.clone());
        int kind = kinds[place];
        long price = cutting.price[kind] / step;
        for (int times = (int) Math.min(most[kind], left / price); times >= 0; times--) {
            bars[kind] = times;
            if (!choose(place + 1, left - times * price, held + hold[kind] * times, goOn)) {
                bars[kind] = 0;
                return false;
            }
        }
        bars[kind] = 0;
        return true;
    }
}
