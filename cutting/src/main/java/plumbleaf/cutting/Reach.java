package plumbleaf.cutting;

import java.util.Arrays;

/**
 * Which lengths can be laid together, to the unit, from the pieces there are of some sizes: a bit for every length, layer upon layer, each with one size more.
 * From the layers a way to lay a length together is read back. When pieces go, the layers from their size on are made anew at the next question.
 * Method: R. Bellman, Dynamic Programming (1957), on bits. Check: ReachTest.
 */
final class Reach {
    private final long[] size;
    private final int[] left;
    private final long[][] layer;
    private final long[][] without;
    private final Effort effort;
    private int fresh;

    /**
     * @param size short to long
     * @param left how many pieces of each
     * @param longest no length beyond this is asked about
     */
    Reach(long[] size, int[] left, long longest, Effort effort) {
        this.size = size.clone();
        this.left = left.clone();
        this.effort = effort;
        int words = (int) (longest >>> 6) + 1;
        this.layer = new long[size.length + 1][words];
        this.without = new long[size.length + 1][words];
        layer[0][0] = 1;
    }

    /** Words of memory taken for so many sizes. */
    static long words(int sizes, long longest) {
        return 2 * ((longest >>> 6) + 1) * (sizes + 1);
    }

    int sizes() {
        return size.length;
    }

    int left(int j) {
        return left[j];
    }

    /** The size of just this length of which a piece is left, or -1. */
    int ofLength(long length) {
        int j = Arrays.binarySearch(size, length);
        return j >= 0 && left[j] > 0 ? j : -1;
    }

    void takeOne(int j) {
        left[j]--;
        fresh = Math.min(fresh, j);
    }

    void putBack(int j) {
        left[j]++;
        fresh = Math.min(fresh, j);
    }

    /**
     * How many pieces of each size make up a length from {@code least} to {@code most}, as long as can be; empty when none do.
     *
     * @param longFirst as many of the long pieces as go, or as few
     */
    int[] way(long least, long most, boolean longFirst) {
        for (int j = fresh; j < left.length; j++)
            raise(layer[j], layer[j + 1], size[j], left[j], layer[j].length, effort);
        fresh = left.length;
        return back(left.length, least, most, longFirst);
    }

    /** The same with no piece of one size; to be asked after {@link #way}. */
    int[] wayWithout(int omitted, long least, long most) {
        int words = (int) (most >>> 6) + 1;
        System.arraycopy(layer[omitted], 0, without[omitted + 1], 0, words);
        for (int j = omitted + 1; j < left.length; j++)
            raise(without[j], without[j + 1], size[j], left[j], words, effort);
        return back(omitted, least, most, true);
    }

    /** What can be made up with so many more of one length, too: in parts of one, two, four and the rest. */
    private static void raise(long[] from, long[] to, long each, int most, int words, Effort effort) {
        System.arraycopy(from, 0, to, 0, words);
        int rest = most;
        for (int part = 1; rest > 0; part *= 2) {
            int pieces = Math.min(part, rest);
            rest -= pieces;
            add(to, words, each * pieces);
        }
        effort.add(words / 32 + 1);
    }

    /** Every length there is, also longer by so much; from the far end down, so that it is added once. */
    static void add(long[] bits, int words, long by) {
        if (by >>> 6 >= words) return;
        int whole = (int) (by >>> 6);
        int part = (int) (by & 63);
        if (part == 0) {
            for (int i = words - 1; i >= whole; i--) bits[i] |= bits[i - whole];
            return;
        }
        for (int i = words - 1; i > whole; i--)
            bits[i] |= bits[i - whole] << part | bits[i - whole - 1] >>> (64 - part);
        bits[whole] |= bits[0] << part;
    }

    private int[] back(int omitted, long least, long most, boolean longFirst) {
        long length = most;
        while (length >= least && !has(left.length, omitted, length)) length--;
        if (length < least) return new int[0];
        int[] way = new int[left.length];
        for (int j = left.length - 1; j >= 0 && length > 0; j--) {
            if (j == omitted) continue;
            int go = (int) Math.min(left[j], length / size[j]);
            int times = longFirst ? go : 0;
            while (!has(j, omitted, length - times * size[j])) times += longFirst ? -1 : 1;
            way[j] = times;
            length -= times * size[j];
        }
        effort.add(left.length / 16 + 1);
        return way;
    }

    /** Whether the sizes before {@code j}, the one omitted apart, make up this length. */
    private boolean has(int j, int omitted, long length) {
        long[] bits = j <= omitted ? layer[j] : omitted < left.length ? without[j] : layer[j];
        return (bits[(int) (length >>> 6)] >>> (length & 63) & 1) == 1;
    }
}
