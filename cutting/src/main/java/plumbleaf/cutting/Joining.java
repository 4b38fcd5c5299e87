package plumbleaf.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What must lie together in a plan that may waste next to nothing, bars of one kind. A piece of half a bar or more shares its bar with shorter pieces alone, and
 * these make up the rest of it within the waste allowed. Two rules follow, each of which leaves it as it was whether there is such a plan:
 * <ul>
 *   <li>a piece that just fills the rest may as well lie there, since what lies there in its stead can change places with it;
 *   <li>where nothing makes up the rest without some size, a piece of that size lies there: the two are one longer piece from now on.
 * </ul>
 * Where nothing makes up the rest of some piece at all there is no such plan. One join brings about the next: of a list made hard by adding to a small hard list,
 * three pieces at a time, often the small one alone is left.
 * Source of the first rule: S. Martello and P. Toth, Knapsack Problems (1990), section 8.5; the second is ours. Check: JoiningTest, NearlyFullBarsTest.
 */
final class Joining {
    /** Of the bits of {@link Reach}: 64 megabytes. */
    private static final long MOST_WORDS = 8_000_000;

    private final Cutting cutting;
    private final Effort effort;
    private final long room;
    private final long waste;
    private final Reach shorts;

    /** The number of the shortest size; of the shorts the next is one less, and so on. */
    private final int last;

    private final List<Joined> open = new ArrayList<>();
    private final List<List<Integer>> full = new ArrayList<>();
    private boolean impossible;
    private int joins;

    /** A long piece with what must lie beside it, and ways to make up the rest that have no size in common. */
    private static final class Joined {
        final List<Integer> pieces = new ArrayList<>();
        final List<int[]> ways = new ArrayList<>();
        long rest;

        Joined(int piece, long rest) {
            pieces.add(piece);
            this.rest = rest;
        }
    }

    private Joining(Cutting cutting, long waste, Effort effort) {
        this.cutting = cutting;
        this.effort = effort;
        this.room = cutting.room[0];
        this.waste = waste;
        this.last = cutting.sizes() - 1;
        int longs = 0;
        while (longs <= last && cutting.size[longs] * 2 >= room) {
            for (int n = 0; n < cutting.demand[longs]; n++) open.add(new Joined(longs, room - cutting.size[longs]));
            longs++;
        }
        long[] size = new long[last + 1 - longs];
        int[] left = new int[size.length];
        for (int j = 0; j < size.length; j++) {
            size[j] = cutting.size[last - j];
            left[j] = cutting.demand[last - j];
        }
        this.shorts = new Reach(size, left, room / 2, effort);
    }

    /** Whether bits can be kept for bars so long, and some piece is long enough to begin with. */
    static boolean suits(Cutting cutting) {
        return cutting.isOneKind()
                && cutting.size[0] * 2 >= cutting.room[0]
                && Reach.words(cutting.sizes(), cutting.room[0] / 2) <= MOST_WORDS;
    }

    /** @param waste what a plan as good as is sought may waste in all */
    static Joining of(Cutting cutting, long waste, Effort effort) {
        Joining joining = new Joining(cutting, waste, effort);
        joining.fillHalves();
        joining.join();
        return joining;
    }

    /** Whether there is no plan of so little waste. */
    boolean isImpossible() {
        return impossible;
    }

    /** Pieces joined to others. */
    int joins() {
        return joins;
    }

    /** What is left to be planned: the joined pieces and the short ones that are still free. */
    Cutting rest() {
        SortedMap<Long, Deque<List<Integer>>> pieces = pieces();
        long[] size = pieces.keySet().stream().mapToLong(each -> each).toArray();
        int[] demand = pieces.values().stream().mapToInt(Deque::size).toArray();
        return new Cutting(size, demand, cutting.room, cutting.price, cutting.supply);
    }

    int fullBars() {
        return full.size();
    }

    /** All bars in the sizes of the task, from those of a plan for the {@link #rest}. */
    List<Column> whole(List<Column> ofRest) {
        List<Deque<List<Integer>>> pieces = new ArrayList<>(pieces().values());
        List<Column> bars = new ArrayList<>();
        for (List<Integer> bar : full) bars.add(column(bar));
        for (Column each : ofRest) {
            List<Integer> bar = new ArrayList<>();
            for (int k = 0; k < each.size.length; k++) {
                for (int n = 0; n < each.times[k]; n++)
                    bar.addAll(pieces.get(each.size[k]).removeFirst());
            }
            bars.add(column(bar));
        }
        return bars;
    }

    private Column column(List<Integer> pieces) {
        int[] counts = new int[cutting.sizes()];
        for (int each : pieces) counts[each]++;
        return Column.of(0, counts);
    }

    /** By length, long to short. */
    private SortedMap<Long, Deque<List<Integer>>> pieces() {
        SortedMap<Long, Deque<List<Integer>>> pieces = new TreeMap<>(Comparator.reverseOrder());
        for (Joined each : open)
            pieces.computeIfAbsent(room - each.rest, size -> new ArrayDeque<>()).add(each.pieces);
        for (int j = 0; j < shorts.sizes(); j++) {
            for (int n = 0; n < shorts.left(j); n++)
                pieces.computeIfAbsent(cutting.size[last - j], size -> new ArrayDeque<>())
                        .add(List.of(last - j));
        }
        return pieces;
    }

    /** Two halves make a bar; an odd one waits for short pieces. */
    private void fillHalves() {
        List<Joined> halves =
                open.stream().filter(each -> each.rest * 2 == room).toList();
        for (int n = 0; n + 1 < halves.size(); n += 2) {
            Joined one = halves.get(n);
            Joined other = halves.get(n + 1);
            one.pieces.addAll(other.pieces);
            joins++;
            close(one);
            open.remove(other);
        }
    }

    private void join() {
        boolean any = true;
        while (any && !impossible) {
            any = false;
            for (Joined each : List.copyOf(open)) {
                if (effort.spent() || impossible) return;
                if (each.ways.isEmpty()) any |= look(each);
            }
        }
    }

    /** True when a piece was joined to this one. */
    private boolean look(Joined of) {
        int just = shorts.ofLength(of.rest);
        if (just >= 0) {
            add(of, just);
            return true;
        }
        long least = Math.max(0, of.rest - waste);
        int[] way = shorts.way(least, of.rest, true);
        if (way.length == 0) {
            impossible = of.rest > waste;
            return false;
        }
        of.ways.add(way);
        int[] common = way.clone();
        keepCommon(of, common, shorts.way(least, of.rest, false));
        for (int j = common.length - 1; j >= 0; j--) {
            if (common[j] == 0) continue;
            int[] other = shorts.wayWithout(j, least, of.rest);
            if (other.length == 0) {
                of.ways.clear();
                add(of, j);
                return true;
            }
            keepCommon(of, common, other);
        }
        return false;
    }

    private static void keepCommon(Joined of, int[] common, int[] way) {
        of.ways.add(way);
        for (int j = 0; j < common.length; j++) common[j] = Math.min(common[j], way[j]);
    }

    private void add(Joined to, int j) {
        joins++;
        to.pieces.add(last - j);
        to.rest -= cutting.size[last - j];
        shorts.takeOne(j);
        if (to.rest == 0) close(to);
        // ways that counted on the piece have to be looked for again
        for (Joined each : open) {
            for (int[] way : each.ways) {
                if (way[j] <= shorts.left(j)) continue;
                each.ways.clear();
                break;
            }
        }
    }

    private void close(Joined bar) {
        full.add(bar.pieces);
        open.remove(bar);
    }
}
