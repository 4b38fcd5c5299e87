package plumbleaf.browser.build;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;

/**
 * Writes numbers in as few bits as they are surprising: each of its bits is guessed from what followed in up to five contexts that were alike, the guesses are weighed by how good
 * they were, and what is written is how far they were off (an arithmetic coder over a logistic mix, as in the literature on context mixing: M. Mahoney, Data Compression Explained,
 * 2013, sections 3.2 and 4.3). A number that its last context has had before is first asked for by one bit.
 *
 * <p>{@code unpack.js} is its twin and must guess alike to the last bit: only whole numbers and the four operations of doubles are used, which are the same everywhere.
 */
final class Odds {
    private static final int MOST = 8;
    private static final int KINDS = 26;
    private static final int BITS = 22;
    private static final int FLAG_BITS = 17;
    private static final int LIKELY_BITS = 18;
    private static final int SURE_AFTER = 127;
    private static final double PACE = 0.02;
    /** Whoever has fewer contexts than this and one is not asked for the likely number first. */
    private static final int LIKELY_FROM = 2;

    private static final long[] STARTS = {0, 11, 27, 283, 4379, 69915};

    /** In each place how likely a one is, in 22 bits, and how often it was asked, in ten. */
    private final int[] table = new int[(1 << BITS) + (1 << FLAG_BITS)];

    private final int[] contexts = new int[MOST];
    private final int[] slots = new int[MOST];
    private final double[] inputs = new double[MOST];
    private final double[] weights = new double[KINDS * 64 * MOST];
    private final double[] stretch = new double[4096];
    private final double[] sure = new double[1024];
    private final int[] squash = new int[8192];
    private final int[] step = new int[1024];
    private final long[] likely = new long[1 << LIKELY_BITS];
    private final int[] likelyFor = new int[1 << LIKELY_BITS];
    private final int[] likelySo = new int[1 << LIKELY_BITS];
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private int used = 0;
    private int low = 0;
    private int high = -1;

    Odds() {
        Arrays.fill(table, 0x80000000);
        Arrays.fill(weights, 0.3);
        // The logistic function and its inverse in 256ths, by multiplying up e^(1/256): no two machines' exp need be
        // alike.
        double up = 1;
        for (int k = 0; k < 4096; k++) {
            int p = (int) (65536 * up / (up + 1));
            squash[4096 + k] = Math.min(p, 65535);
            if (k > 0) squash[4096 - k] = Math.max(65536 - p, 1);
            up *= 1.0039138893383475;
        }
        squash[0] = 1;
        int at = 0;
        for (int i = 0; i < 4096; i++) {
            while (at < 8191 && squash[at] < i * 16 + 8) at++;
            stretch[i] = Math.min(8, Math.max(-8, (at - 4096) / 256.0));
        }
        for (int n = 0; n < 1024; n++) {
            step[n] = 32768 / (2 * n + 3) / 2;
            sure[n] = n == 0 ? 0 : n < 3 ? 0.75 + 0.1 * n : 1.2;
        }
    }

    /** Thirty bits: a browser keeps larger numbers apart, one by one, which takes longer than all the rest. */
    static int mix(int h, int v) {
        int mixed = (h ^ v) * 0x9E3779B1;
        return (mixed ^ (mixed >>> 15)) >> 2;
    }

    /** One more context for the number that comes next: all that it is taken to depend on. */
    void context(int kind, int first, int... more) {
        int h = mix(kind * 0x2545F491 + 77, first);
        for (int one : more) h = mix(h, one);
        contexts[used] = mix(h, used + 1);
        used++;
    }

    /** A number with these two contexts. */
    void number(int kind, long v, int first, int second) {
        context(kind, first);
        context(kind, first, second);
        number(kind, v);
    }

    void number(int kind, long v) {
        if (used < LIKELY_FROM) {
            plainNumber(kind, v);
            return;
        }
        int h = mix(contexts[used - 1], 12345);
        int at = (h >>> 10) & ((1 << LIKELY_BITS) - 1);
        int check = h & 0xffff;
        int so = likelySo[at];
        boolean ours = so > 0 && likelyFor[at] == check;
        boolean hit = ours && likely[at] == v;
        if (ours) askLikely(kind, (int) likely[at], so, hit);
        if (hit) {
            used = 0;
            likelySo[at] = Math.min(255, so + 1);
            return;
        }
        plainNumber(kind, v);
        likelyFor[at] = check;
        likely[at] = v;
        likelySo[at] = 1;
    }

    private void askLikely(int kind, int guess, int so, boolean hit) {
        int kept = used;
        int[] keep = Arrays.copyOf(contexts, 3);
        used = 0;
        context(kind + 40, Math.min(so, 20));
        context(kind + 40, guess, so > 3 ? 2 : 1);
        context(kind + 40, keep[0], guess, 1);
        flag(kind, hit ? 1 : 0);
        used = kept;
        System.arraycopy(keep, 0, contexts, 0, 3);
    }

    /** In fours of bits: the first says the number, or how many more there are. */
    private void plainNumber(int kind, long v) {
        if (v < STARTS[1]) nibble(kind, 0, 0, (int) v);
        else {
            int n = 1;
            while (n < 5 && v >= STARTS[n + 1]) n++;
            long rest = n < 5 ? v - STARTS[n] : v;
            nibble(kind, 0, 0, 10 + n);
            if (n == 5) n = 8;
            int prefix = n;
            for (int i = n - 1; i >= 0; i--) {
                int x = (int) (rest >>> (4 * i)) & 15;
                nibble(kind, Math.min(3, n - i), prefix, x);
                prefix = prefix * 16 + x + 16;
            }
        }
        used = 0;
    }

    void octet(int kind, int v) {
        nibble(kind, 0, 0, v >> 4);
        nibble(kind, 1, 1 + (v >> 4), v & 15);
        used = 0;
    }

    void flag(int kind, int v) {
        // Close together, behind the numbers': they stay in the nearest memory.
        for (int i = 0; i < used; i++) slots[i] = (1 << BITS) - 1 + flagSlot(contexts[i] * 0xC2B2AE35);
        bit(1, kind * 64 * MOST, v);
        used = 0;
    }

    private void nibble(int kind, int place, int prefix, int v) {
        for (int i = 0; i < used; i++) slots[i] = slot((contexts[i] ^ prefix * 0x85EBCA6B) * 0xC2B2AE35);
        int set = (kind * 4 + place) * 16 * MOST;
        int node = 1;
        for (int i = 3; i >= 0; i--) {
            int bit = v >>> i & 1;
            bit(node, set + node * MOST, bit);
            node = node * 2 + bit;
        }
    }

    private static int flagSlot(int h) {
        return ((h ^ (h >>> 15)) * 0x9E3779B1) >>> (32 - FLAG_BITS);
    }

    private static int slot(int h) {
        return (((h ^ (h >>> 15)) * 0x9E3779B1) >>> (36 - BITS)) << 4;
    }

    private void bit(int node, int set, int bit) {
        double dot = 0;
        for (int i = 0; i < used; i++) {
            int t = table[slots[i] + node];
            inputs[i] = stretch[t >>> 20] * sure[t & 1023];
            dot += weights[set + i] * inputs[i];
        }
        int p = squash[Math.min(8191, Math.max(1, (int) (dot * 256) + 4096))];
        write(p, bit);
        double off = (bit - p / 65536.0) * PACE;
        for (int i = 0; i < used; i++) {
            weights[set + i] += off * inputs[i];
            int t = table[slots[i] + node];
            int seen = t & 1023;
            int by = (((bit << 22) - (t >>> 10)) >> 3) * step[seen];
            table[slots[i] + node] = ((t & 0xfffffc00) + (by & 0xfffffc00)) | Math.min(SURE_AFTER, seen + 1);
        }
    }

    private void write(int p, int bit) {
        int range = high - low;
        int mid = low + (range >>> 16) * p + (((range & 0xffff) * p) >>> 16);
        if (bit == 1) high = mid;
        else low = mid + 1;
        while (((low ^ high) & 0xff000000) == 0) {
            out.write(high >>> 24);
            low <<= 8;
            high = (high << 8) | 255;
        }
    }

    byte[] finished() {
        for (int shift = 24; shift >= 0; shift -= 8) out.write(high >>> shift);
        return out.toByteArray();
    }
}
