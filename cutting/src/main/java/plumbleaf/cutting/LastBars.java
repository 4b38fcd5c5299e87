package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Few bars to be filled with all of some pieces, next to nothing wasted. The longest piece left takes a bar, what makes up its rest is tried, few long pieces before
 * many short ones; which rests can be made up at all is kept as bits. Ends after some thousand looks, found or not.
 * Method: R. Bellman, Dynamic Programming (1957), on bits, with a search back through them. Check: LastBarsTest.
 */
final class LastBars {
    private static final int MOST_LOOKS = 4_000;

    private final long[] length;
    private final long room;
    private final Effort effort;
    private final boolean[] used;
    private final int[][] bars;
    private final List<long[][]> reach = new ArrayList<>();
    private int looks;

    private LastBars(long[] length, int bars, long room, Effort effort) {
        this.length = length;
        this.room = room;
        this.effort = effort;
        this.used = new boolean[length.length];
        this.bars = new int[bars][];
    }

    /**
     * @param length of each piece, long to short; together no more than so many bars hold
     * @param bars one or more
     * @return for each bar the numbers of its pieces; empty where none was found
     */
    static List<int[]> fill(long[] length, int bars, long room, Effort effort) {
        long waste = bars * room - Arrays.stream(length).sum();
        LastBars last = new LastBars(length, bars, room, effort);
        return last.from(0, waste) ? List.of(last.bars) : List.of();
    }

    private boolean from(int bar, long waste) {
        int[] left = left();
        if (bar == bars.length - 1) {
            bars[bar] = left;
            return true;
        }
        if (left.length == 0 || length[left[0]] > room) return false;
        long[][] made = made(bar, left);
        int[] held = new int[left.length];
        held[0] = left[0];
        used[left[0]] = true;
        boolean found = fill(bar, left, made, 1, room - length[left[0]], waste, held, 1);
        used[left[0]] = false;
        return found;
    }

    private int[] left() {
        int[] left = new int[length.length];
        int n = 0;
        for (int piece = 0; piece < left.length; piece++) if (!used[piece]) left[n++] = piece;
        return Arrays.copyOf(left, n);
    }

    /** The pieces from {@code at} on fill up what is left of this bar, and the bars after it take what remains. */
    private boolean fill(int bar, int[] left, long[][] made, int at, long rest, long waste, int[] held, int n) {
        if (++looks > MOST_LOOKS) return false;
        if (rest <= waste) {
            bars[bar] = Arrays.copyOf(held, n);
            if (from(bar + 1, waste - rest)) return true;
        }
        for (int k = at; k < left.length; k++) {
            long still = rest - length[left[k]];
            if (still < 0 || !canBeMade(made[k + 1], Math.max(0, still - waste), still)) continue;
            // of pieces alike the first one not taken stands for the rest
            if (k > at && length[left[k]] == length[left[k - 1]]) continue;
            used[left[k]] = true;
            held[n] = left[k];
            boolean found = fill(bar, left, made, k + 1, still, waste, held, n + 1);
            used[left[k]] = false;
            if (found) return true;
            if (looks > MOST_LOOKS) return false;
        }
        return false;
    }

    /** For each place what lengths the pieces from there on make up. */
    private long[][] made(int bar, int[] left) {
        int words = (int) (room >>> 6) + 1;
        while (reach.size() <= bar) reach.add(new long[length.length + 1][words]);
        long[][] made = reach.get(bar);
        Arrays.fill(made[left.length], 0);
        made[left.length][0] = 1;
        for (int k = left.length - 1; k > 0; k--) {
            System.arraycopy(made[k + 1], 0, made[k], 0, words);
            Reach.add(made[k], words, length[left[k]]);
        }
        effort.add((long) left.length * words / 32 + 1);
        return made;
    }

    private static boolean canBeMade(long[] bits, long least, long most) {
        for (long length = most; length >= least; length--) {
            if ((bits[(int) (length >>> 6)] >>> (length & 63) & 1) == 1) return true;
        }
        return false;
    }
}
