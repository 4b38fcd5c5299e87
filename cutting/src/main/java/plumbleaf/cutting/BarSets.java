package plumbleaf.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The sets of bars that come to just so much, cost by cost. With mixed prices the cost of a set jumps, so the least possible cost is settled here, before any pattern
 * is looked at. How much bars of some kinds hold at the most for just so much, in length and in worths, is known ({@link MostHeld}); sets that cannot hold the pieces
 * are left out by it and by {@link SetsRuledOut}, also by what that learns meanwhile. Bars that cost nothing are always all there.
 * Check: BarSetsTest.
 */
final class BarSets {
    /** For the sets of one cost. */
    private static final long MOST_LOOKS = 2_000_000;

    /** Looked up in the table. */
    private static final int COSTS_A_STEP = 64;

    private final Cutting cutting;
    private final SetsRuledOut ruledOut;
    private final Effort effort;
    private final long step;
    private final int[] most;
    private final List<MostHeld> measures = new ArrayList<>();

    /** By each measure, what the bars chosen hold. */
    private final long[] held;

    /** Kinds that cost something, those that hold most for the cent first. */
    private final int[] kinds;

    /** What all bars there may be cost, in steps. */
    private final long dearest;

    private final int[] bars;
    private long looks;

    /**
     * What pieces need and bars hold, in length or in worths.
     *
     * @param hold the most a bar of each kind holds
     * @param needed what all pieces come to
     */
    record Measure(List<Long> hold, long needed) {
        Measure {
            hold = List.copyOf(hold);
        }

        static Measure of(long[] hold, long needed) {
            return new Measure(Arrays.stream(hold).boxed().toList(), needed);
        }
    }

    /**
     * @param measures at least one
     * @param below no set of this cost or more is asked about
     */
    BarSets(Cutting cutting, List<Measure> measures, long below, SetsRuledOut ruledOut, Effort effort) {
        this.cutting = cutting;
        this.ruledOut = ruledOut;
        this.effort = effort;
        this.step = cutting.step();
        this.bars = new int[cutting.kinds()];
        this.most = IntStream.range(0, bars.length).map(k -> most(cutting, k)).toArray();
        List<Long> hold = measures.get(0).hold();
        this.kinds = IntStream.range(0, bars.length)
                .filter(k -> cutting.price[k] > 0 && most[k] > 0 && hold.get(k) > 0)
                .boxed()
                .sorted(Comparator.<Integer>comparingDouble(k -> -(double) hold.get(k) / cutting.price[k])
                        .thenComparing(k -> k))
                .mapToInt(k -> k)
                .toArray();
        ruledOut.choosingFrom(kinds);
        long all = 0;
        for (int k : kinds) all += cutting.price[k] / step * most[k];
        this.dearest = all;
        long[] inSteps = Arrays.stream(cutting.price).map(each -> each / step).toArray();
        for (Measure measure : measures) {
            long[] each = measure.hold().stream().mapToLong(x -> x).toArray();
            this.measures.add(
                    new MostHeld(kinds, most, inSteps, each, measure.needed(), Math.min(below / step, all), effort));
        }
        this.held = new long[measures.size()];
        for (int k = 0; k < bars.length; k++) if (cutting.price[k] == 0) set(k, most[k]);
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

    /**
     * The least cost from this one on and below the other that comes out as that of a set which may hold the pieces by every measure; or the other. Where the effort
     * runs out on the way, how far it came.
     */
    long costFrom(long least, long below) {
        long cost = -Math.floorDiv(-least, step);
        long from = cost;
        long past = Math.min(dearest + 1, -Math.floorDiv(-below, step));
        while (cost < past && isTooLittle(0, cost) && !effort.spent()) {
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
        choose(0, cost / step, goOn);
        effort.add(looks / 2 + 1);
        return looks < MOST_LOOKS && !effort.spent();
    }

    /** Whether by some measure no set of just so many steps holds the pieces. */
    private boolean isTooLittle(int place, long cost) {
        for (int m = 0; m < held.length; m++) {
            if (measures.get(m).isTooLittle(held[m], place, cost)) return true;
        }
        return false;
    }

    /** False when no more are wanted. */
    private boolean choose(int place, long left, Predicate<int[]> goOn) {
        if (++looks >= MOST_LOOKS || effort.spent()) return false;
        if (isTooLittle(place, left) || ruledOut.isHopeless(bars, place, left * step)) return true;
        if (place == kinds.length) return ruledOut.has(bars) || goOn.test(bars.clone());
        int kind = kinds[place];
        long price = cutting.price[kind] / step;
        boolean goesOn = true;
        int times = (int) Math.min(most[kind], left / price);
        set(kind, times);
        while (true) {
            goesOn = choose(place + 1, left - times * price, goOn);
            if (!goesOn || times == 0) break;
            set(kind, --times);
        }
        set(kind, 0);
        return goesOn;
    }

    private void set(int kind, int times) {
        for (int m = 0; m < held.length; m++) held[m] += measures.get(m).hold(kind) * (times - bars[kind]);
        bars[kind] = times;
    }
}
