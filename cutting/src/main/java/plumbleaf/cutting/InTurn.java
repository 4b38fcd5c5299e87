package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Given bars filled in turn, next to nothing wasted: the longest piece left first, and to make up the rest of the bar as many long ones as go. Short pieces, which many
 * make up any length, stay for the last bars. Quick, and where pieces are small against the bars mostly enough; it finds a plan or nothing, and proves nothing.
 * Check: InTurnTest.
 */
final class InTurn {
    /** Of the bits of {@link Reach}: sixteen megabytes. */
    private static final long MOST_WORDS = 2_000_000;

    /** Sizes tried as the first of a bar, from the longest on. */
    private static final int FIRSTS = 12;

    private final Cutting cutting;
    private final Reach reach;

    /** The number of the shortest size; in {@link Reach} sizes go the other way. */
    private final int last;

    private long waste;

    private InTurn(Cutting cutting, long longest, Effort effort) {
        this.cutting = cutting;
        this.last = cutting.sizes() - 1;
        long[] size = new long[last + 1];
        int[] left = new int[last + 1];
        for (int j = 0; j <= last; j++) {
            size[j] = cutting.size[last - j];
            left[j] = cutting.demand[last - j];
        }
        this.reach = new Reach(size, left, longest, effort);
    }

    /**
     * @param cutting with the bars to be filled as supply, see {@link Cutting#withBars}
     * @return one pattern a bar used; empty where it did not come out
     */
    static List<Column> fill(Cutting cutting, Effort effort) {
        long longest = 0;
        long room = 0;
        for (int k = 0; k < cutting.kinds(); k++) {
            if (cutting.supply[k] > 0) longest = Math.max(longest, cutting.room[k]);
            room += cutting.room[k] * Math.max(0, cutting.supply[k]);
        }
        if (longest <= 0 || Reach.words(cutting.sizes(), longest) > MOST_WORDS) return List.of();
        InTurn turn = new InTurn(cutting, longest, effort);
        turn.waste = room - cutting.volume();
        return turn.bars(effort);
    }

    private List<Column> bars(Effort effort) {
        int[] longFirst = IntStream.range(0, cutting.kinds())
                .filter(k -> cutting.supply[k] > 0 && cutting.room[k] > 0)
                .boxed()
                .sorted(Comparator.comparing((Integer k) -> -cutting.room[k]))
                .mapToInt(k -> k)
                .toArray();
        List<Column> bars = new ArrayList<>();
        for (int kind : longFirst) {
            for (int n = 0; n < cutting.supply[kind]; n++) {
                if (effort.spent()) return List.of();
                if (longestLeft(cutting.room[kind], last) < 0) {
                    waste -= cutting.room[kind];
                    if (waste < 0) return List.of();
                    continue;
                }
                int[] counts = bar(cutting.room[kind]);
                if (counts.length == 0) return List.of();
                bars.add(Column.of(kind, counts));
            }
        }
        return longestLeft(Long.MAX_VALUE, last) < 0 ? bars : List.of();
    }

    /** How many of each size lie in the next bar; empty where none of the longest has a rest that can be made up. */
    private int[] bar(long room) {
        int first = longestLeft(room, last);
        for (int tries = 0; tries < FIRSTS && first >= 0; tries++) {
            reach.takeOne(first);
            long rest = room - cutting.size[last - first];
            int[] way = reach.way(Math.max(0, rest - waste), rest, true);
            if (way.length > 0) return taken(first, way, room);
            reach.putBack(first);
            first = longestLeft(room, first - 1);
        }
        return new int[0];
    }

    private int[] taken(int first, int[] way, long room) {
        int[] counts = new int[last + 1];
        counts[last - first]++;
        for (int j = 0; j < way.length; j++) {
            counts[last - j] += way[j];
            for (int n = 0; n < way[j]; n++) reach.takeOne(j);
        }
        long used = 0;
        for (int i = 0; i < counts.length; i++) used += counts[i] * cutting.size[i];
        waste -= room - used;
        return counts;
    }

    /** The longest size, from this one down, of which a piece is left and that goes into the room; below zero for none. */
    private int longestLeft(long room, int from) {
        int j = from;
        while (j >= 0 && (reach.left(j) == 0 || cutting.size[last - j] > room)) j--;
        return j;
    }
}
