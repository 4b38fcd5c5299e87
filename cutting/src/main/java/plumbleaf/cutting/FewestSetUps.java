package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The fewest different set-ups with which the bars of a plan can be cut into its pieces: all plans of one set-up, then of two, and so on, each tried to its end,
 * until one does. A plan of more bars than can be tried says how far it came. Check: FewestSetUpsTest (all plans tried).
 */
final class FewestSetUps {
    /** Ways looked at before it is given up: a moment's work, and enough for a plan of a dozen bars. */
    private static final int MOST_LOOKS = 400_000;

    /** Calls within calls that a thread's stack holds with ease; a yard of pickets of a hundred lengths would go on for more. */
    private static final int DEEPEST = 3000;

    private final Cutting cutting;
    private final int[] left;
    private final int[] bars;
    private int barsLeft;
    private final List<Column> found = new ArrayList<>();
    private int looks;

    private FewestSetUps(Cutting cutting, List<Column> plan) {
        this.cutting = cutting;
        this.left = new int[cutting.sizes()];
        this.bars = new int[cutting.kinds()];
        for (Column bar : plan) {
            bars[bar.kind]++;
            barsLeft++;
            for (int k = 0; k < bar.size.length; k++) left[bar.size[k]] += bar.times[k];
        }
    }

    /**
     * The plan to cut, the ways it is cut in, and the number no plan of these bars goes below.
     *
     * @param least the same as {@code ways} when it is proven
     */
    record Shown(List<Column> plan, int ways, int least) {
        Shown {
            plan = List.copyOf(plan);
        }
    }

    /** @param plan with few set-ups already: the fewer, the less is to be tried */
    static Shown of(Cutting cutting, List<Column> plan) {
        int ways = SetUps.count(plan);
        FewestSetUps search = new FewestSetUps(cutting, plan);
        for (int fewer = 1; fewer < ways; fewer++) {
            if ((long) fewer * (cutting.sizes() + cutting.kinds()) > DEEPEST) return new Shown(plan, ways, fewer);
            if (search.cutIn(fewer)) return new Shown(search.found, fewer, fewer);
            if (search.looks > MOST_LOOKS) return new Shown(plan, ways, fewer);
        }
        return new Shown(plan, ways, ways);
    }

    /** Whether what is left can be cut in so many ways; the widest piece left lies in one of them. */
    private boolean cutIn(int ways) {
        if (++looks > MOST_LOOKS) return false;
        if (ways == 1) return alike();
        if (barsLeft < ways) return false;
        return shared(0, new int[bars.length], 0, widest(), ways);
    }

    /** One way for all bars that are left. */
    private boolean alike() {
        int count = barsLeft;
        if (count == 0) return false;
        long used = 0;
        for (int i = 0; i < left.length; i++) {
            if (left[i] % count != 0) return false;
            used += left[i] / count * cutting.size[i];
        }
        if (used == 0 || used > room(bars)) return false;
        int[] each = new int[left.length];
        for (int i = 0; i < each.length; i++) each[i] = left[i] / count;
        add(each, bars);
        return true;
    }

    /** Every choice of bars to be cut in the next way. */
    private boolean shared(int kind, int[] of, int count, int widest, int ways) {
        if (kind == bars.length)
            return count > 0 && filled(widest, widest, new int[left.length], room(of), of, count, ways);
        // each of the other ways has a bar of its own, and each of these bars one of the widest pieces
        int most = Math.min(bars[kind], Math.min(barsLeft - (ways - 1), left[widest]) - count);
        for (int n = most; n >= 0; n--) {
            of[kind] = n;
            if (shared(kind + 1, of, count + n, widest, ways)) return true;
        }
        of[kind] = 0;
        return false;
    }

    /** Every way that so many bars can be cut in, with the widest piece left in it. */
    private boolean filled(int size, int widest, int[] each, long room, int[] of, int count, int ways) {
        if (++looks > MOST_LOOKS) return false;
        if (size == left.length) return rest(each, of, count, ways);
        int most = (int) Math.min(left[size] / count, room / cutting.size[size]);
        int least = size == widest ? 1 : 0;
        for (int times = most; times >= least; times--) {
            each[size] = times;
            if (filled(size + 1, widest, each, room - times * cutting.size[size], of, count, ways)) return true;
        }
        each[size] = 0;
        return false;
    }

    private boolean rest(int[] each, int[] of, int count, int ways) {
        change(each, of, count, -1);
        boolean does = volumeFits() && cutIn(ways - 1);
        change(each, of, count, 1);
        if (does) add(each, of);
        return does;
    }

    private void change(int[] each, int[] of, int count, int by) {
        for (int i = 0; i < left.length; i++) left[i] += by * count * each[i];
        for (int k = 0; k < bars.length; k++) bars[k] += by * of[k];
        barsLeft += by * count;
    }

    private boolean volumeFits() {
        long volume = 0;
        for (int i = 0; i < left.length; i++) volume += left[i] * cutting.size[i];
        for (int k = 0; k < bars.length; k++) volume -= bars[k] * cutting.room[k];
        return volume <= 0;
    }

    private int widest() {
        int size = 0;
        while (size < left.length - 1 && left[size] == 0) size++;
        return size;
    }

    /** Of the shortest of these bars. */
    private long room(int[] of) {
        long least = Long.MAX_VALUE;
        for (int k = 0; k < of.length; k++) {
            if (of[k] > 0) least = Math.min(least, cutting.room[k]);
        }
        return least;
    }

    private void add(int[] each, int[] of) {
        for (int k = 0; k < of.length; k++) {
            Column bar = Column.of(k, each);
            for (int n = 0; n < of[k]; n++) found.add(bar);
        }
    }
}
