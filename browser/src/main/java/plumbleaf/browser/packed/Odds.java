package plumbleaf.browser.packed;

import java.util.Arrays;

/**
 * Tells numbers in as few bits as they are surprising. What followed last time in each of several contexts that were alike is asked for by name first, one bit each; what none of
 * them knew is told in fours of bits, each bit guessed from its two nearest contexts, the guesses weighed by how good they were. What is written is how far the guesses were off (an
 * arithmetic coder over a logistic mix, as in the literature on context mixing: M. Mahoney, Data Compression Explained, 2013, sections 3.2 and 4.3).
 *
 * <p>Both ways by the same steps: packing, each number is known and written; unpacking, the number given is of no matter and the one read is told. Only whole numbers and the four
 * operations of floats are used, which are the same everywhere. Half of unpacking is spent in two methods here, so each goes one way for a one and another for a zero, that a
 * processor may go ahead, and no class here has anything to set up when it is first named, which would be asked for at every call.
 */
public final class Odds {
    private static final int MOST = 6;
    private static final int SLOT_BITS = 22;
    private static final int FLAG_BITS = 17;
    private static final int LIKELY_BITS = 18;

    /** How many of those that are likely are asked for. */
    private static final int STAGES = 3;

    /** How often a slot counts that it was asked; from then on it forgets the oldest as fast as it learns. */
    private static final int SURE = 15;

    private static final int FLAG_SURE = 127;
    private static final int LIKELY_SURE = 15;
    private static final int HASHED_FLAGS = Part.KINDS * STAGES * MOST * 16;
    private static final int FLAG_WEIGHTS = Part.KINDS * 4 * 16 * 2;
    private static final float FIRST_WEIGHT = 0.4f;
    private static final float PACE = 0.02f / 65536 / 256;
    private static final int SPREAD = 0x9E3779B1;
    private static final int SALT = 0x85EBCA6B;

    /** In each place how likely a one is, in 12 bits, and how often it was asked, in four; sixteen places for each context of four bits. */
    private final char[] slots = new char[1 << SLOT_BITS];

    /** The same for single bits, in 22 bits and ten. */
    private final int[] flags = new int[HASHED_FLAGS + (1 << FLAG_BITS)];

    /** What followed last in a context: eight bits of it to know it by, twenty for the number, four for how often it did. */
    private final int[] likely = new int[1 << LIKELY_BITS];

    private final int[] contexts = new int[MOST + 1];
    private final float[] weights = new float[FLAG_WEIGHTS + Part.KINDS * (STAGES + 1) * 2];
    private final float[] stretch = new float[4096];
    private final char[] squash = new char[8192];
    private final int[] step = new int[SURE + 1];
    private final int[] flagStep = new int[FLAG_SURE + 1];

    /** The least number that is told in so many more fours of bits. */
    private final int[] starts = {0, 11, 27, 283, 4379, 69915};

    private final boolean reads;
    private byte[] octets;
    private int place = 0;
    private int used = 0;
    private int low = 0;
    private int high = -1;
    private int at = 0;

    /** @param packed what is read; empty to write */
    public Odds(byte[] packed) {
        reads = packed.length > 0;
        octets = reads ? packed : new byte[1 << 16];
        if (reads) for (int i = 0; i < 4; i++) pass(0);
        Arrays.fill(slots, (char) 0x8000);
        Arrays.fill(flags, 0x80000000);
        Arrays.fill(weights, FIRST_WEIGHT);
        logistic();
        for (int n = 0; n <= SURE; n++) step[n] = 131072 / (2 * n + 3);
        for (int n = 0; n <= FLAG_SURE; n++) flagStep[n] = 16384 / (2 * n + 3);
    }

    /** The logistic function and its inverse in 256ths, by multiplying up e^(1/256): no two machines' exp need be alike. */
    private void logistic() {
        double up = 1;
        for (int k = 0; k < 4096; k++) {
            int p = (int) (65536 * up / (up + 1));
            squash[4096 + k] = (char) Math.min(p, 65535);
            if (k > 0) squash[4096 - k] = (char) Math.max(65536 - p, 1);
            up *= 1.0039138893383475;
        }
        squash[0] = 1;
        int k = 0;
        for (int i = 0; i < 4096; i++) {
            while (k < 8191 && squash[k] < i * 16 + 8) k++;
            stretch[i] = Math.min(2048, Math.max(-2048, k - 4096));
        }
    }

    static int mix(int h, int v) {
        int mixed = (h ^ v) * SPREAD;
        return mixed ^ (mixed >>> 15);
    }

    private int start(int kind, int first) {
        return mix((kind * 8 + used) * 0x2545F491 + 77, first);
    }

    /** One more context for the number that comes next: all that it is taken to depend on. */
    void context(int kind, int a) {
        contexts[used++] = start(kind, a);
    }

    void context(int kind, int a, int b) {
        contexts[used++] = mix(start(kind, a), b);
    }

    void context(int kind, int a, int b, int c) {
        contexts[used++] = mix(mix(start(kind, a), b), c);
    }

    void context(int kind, int a, int b, int c, int d) {
        contexts[used++] = mix(mix(mix(start(kind, a), b), c), d);
    }

    void context(int kind, int a, int b, int c, int d, int e) {
        contexts[used++] = mix(mix(mix(mix(start(kind, a), b), c), d), e);
    }

    /** A number with these two contexts. */
    int number(int kind, int v, int first, int second) {
        context(kind, first);
        context(kind, first, second);
        return number(kind, v);
    }

    /** A number of up to 32 bits, the smaller the shorter. */
    int number(int kind, int v) {
        int told = likely(kind, v);
        if (told < 0) told = learned(plainNumber(kind, v));
        used = 0;
        return told;
    }

    /** One of 256, all alike at first. */
    int octet(int kind, int v) {
        int told = likely(kind, v);
        if (told < 0) told = learned(plainOctet(kind, v));
        used = 0;
        return told;
    }

    /** The number where it is one of those that followed before, the longest context's first; below zero where it is none. */
    private int likely(int kind, int v) {
        int[] likely = this.likely;
        int[] contexts = this.contexts;
        if (used < 2) return -1;
        int first = contexts[0];
        int stage = 0;
        int told = -1;
        int last = -1;
        int beforeLast = -1;
        for (int i = used - 1; i >= 0; i--) {
            int at = contexts[i] >>> (32 - LIKELY_BITS);
            int check = contexts[i] & 255;
            int known = likely[at];
            int often = known & LIKELY_SURE;
            if (often == 0 || known >>> 24 != check) {
                likely[at] = check << 24;
                continue;
            }
            int guess = (known >>> 4) & 0xFFFFF;
            if (told >= 0 || stage == STAGES || guess == last || guess == beforeLast) continue;
            beforeLast = last;
            last = guess;
            int a = ((kind * STAGES + stage) * MOST + i) * 16 + often;
            stage++;
            int b = HASHED_FLAGS + (((first ^ ((guess * 4 + stage) * SALT)) * SPREAD) >>> (32 - FLAG_BITS));
            if (isHit(a, b, FLAG_WEIGHTS + (kind * (STAGES + 1) + stage) * 2, v == guess)) told = guess;
        }
        if (told >= 0) learned(told);
        return told;
    }

    private int learned(int told) {
        if (used < 2 || told >>> 20 != 0) return told;
        for (int i = 0; i < used; i++) {
            int at = contexts[i] >>> (32 - LIKELY_BITS);
            int known = likely[at];
            int often = known & LIKELY_SURE;
            if (often > 0 && ((known >>> 4) & 0xFFFFF) == told) likely[at] = often < LIKELY_SURE ? known + 1 : known;
            else if (often > 2) likely[at] = known - often + often / 2;
            else likely[at] = (known & 0xFF000000) | (told << 4) | 1;
        }
        return told;
    }

    /** In fours of bits: the first says the number, or how many more there are. */
    private int plainNumber(int kind, int v) {
        int more = more(v);
        int first = nibble(kind, 0, 0, more == 0 ? v : 10 + more);
        if (first < 11) return first;
        more = first - 10;
        int start = more < 5 ? starts[more] : 0;
        int rest = v - start;
        if (more == 5) more = 8;
        int prefix = more;
        int told = 0;
        for (int i = more - 1; i >= 0; i--) {
            int x = nibble(kind, Math.min(3, more - i), prefix, (rest >>> (4 * i)) & 15);
            prefix = prefix * 16 + x + 16;
            told = (told << 4) | x;
        }
        return told + start;
    }

    private int more(int v) {
        if (v < 0) return 5;
        int more = 0;
        while (more < 5 && v >= starts[more + 1]) more++;
        return more;
    }

    private int plainOctet(int kind, int v) {
        int first = nibble(kind, 0, 0, v >> 4);
        return (first << 4) | nibble(kind, 1, 1 + first, v & 15);
    }

    /** One bit, of two contexts. */
    int flag(int kind, int v) {
        int a = HASHED_FLAGS + (contexts[0] >>> (32 - FLAG_BITS));
        int b = HASHED_FLAGS + (contexts[1] >>> (32 - FLAG_BITS));
        used = 0;
        return isHit(a, b, FLAG_WEIGHTS + kind * (STAGES + 1) * 2, v == 1) ? 1 : 0;
    }

    private boolean isHit(int a, int b, int own, boolean v) {
        int[] flags = this.flags;
        float[] weights = this.weights;
        int inA = flags[a];
        int inB = flags[b];
        int oftenA = inA & FLAG_SURE;
        int oftenB = inB & FLAG_SURE;
        float saysA = stretch[inA >>> 20];
        float saysB = stretch[inB >>> 20];
        float weightA = weights[own];
        float weightB = weights[own + 1];
        int p = squashed(weightA * saysA + weightB * saysB);
        int stepA = flagStep[oftenA];
        int stepB = flagStep[oftenB];
        if (oftenA < FLAG_SURE) oftenA++;
        if (oftenB < FLAG_SURE) oftenB++;
        boolean one = isOne(p, v);
        float off;
        if (one) {
            off = (65536 - p) * PACE;
            flags[a] = (inA & ~1023) + (((((1 << 22) - (inA >>> 10)) >> 3) * stepA) & ~1023) | oftenA;
            flags[b] = (inB & ~1023) + (((((1 << 22) - (inB >>> 10)) >> 3) * stepB) & ~1023) | oftenB;
        } else {
            off = p * -PACE;
            flags[a] = (inA & ~1023) - (((inA >>> 13) * stepA) & ~1023) | oftenA;
            flags[b] = (inB & ~1023) - (((inB >>> 13) * stepB) & ~1023) | oftenB;
        }
        weights[own] = weightA + off * saysA;
        weights[own + 1] = weightB + off * saysB;
        return one;
    }

    private int nibble(int kind, int nth, int prefix, int v) {
        char[] slots = this.slots;
        float[] weights = this.weights;
        char[] squash = this.squash;
        float[] stretch = this.stretch;
        int[] step = this.step;
        int salt = prefix * SALT;
        int a = (((contexts[0] ^ salt) * SPREAD) >>> (36 - SLOT_BITS)) << 4;
        int b = (((contexts[1] ^ salt) * SPREAD) >>> (36 - SLOT_BITS)) << 4;
        int set = (kind * 4 + nth) * 32;
        int low = this.low;
        int high = this.high;
        int node = 1;
        for (int bit = 3; bit >= 0; bit--) {
            int inA = slots[a + node];
            int inB = slots[b + node];
            int oftenA = inA & SURE;
            int oftenB = inB & SURE;
            float saysA = stretch[inA >>> 4];
            float saysB = stretch[inB >>> 4];
            int own = set + node * 2;
            float weightA = weights[own];
            float weightB = weights[own + 1];
            int q = (int) (weightA * saysA + weightB * saysB) + 4096;
            if (q < 1) q = 1;
            else if (q > 8191) q = 8191;
            int p = squash[q];
            int range = high - low;
            int mid = low + (range >>> 16) * p + (((range & 0xFFFF) * p) >>> 16);
            int moreA = oftenA < SURE ? 1 : 0;
            int moreB = oftenB < SURE ? 1 : 0;
            float off;
            if (reads ? at + Integer.MIN_VALUE <= mid + Integer.MIN_VALUE : ((v >>> bit) & 1) != 0) {
                high = mid;
                off = (65536 - p) * PACE;
                slots[a + node] = (char) (inA + (((((65535 - inA) >> 4) * step[oftenA]) >> 12) & 0xFFF0) + moreA);
                slots[b + node] = (char) (inB + (((((65535 - inB) >> 4) * step[oftenB]) >> 12) & 0xFFF0) + moreB);
                node = node * 2 + 1;
            } else {
                low = mid + 1;
                off = p * -PACE;
                slots[a + node] = (char) (inA - ((((inA >> 4) * step[oftenA]) >> 12) & 0xFFF0) + moreA);
                slots[b + node] = (char) (inB - ((((inB >> 4) * step[oftenB]) >> 12) & 0xFFF0) + moreB);
                node = node * 2;
            }
            weights[own] = weightA + off * saysA;
            weights[own + 1] = weightB + off * saysB;
            while ((low ^ high) >>> 24 == 0) {
                pass(high >>> 24);
                low <<= 8;
                high = (high << 8) | 255;
            }
        }
        this.low = low;
        this.high = high;
        return node & 15;
    }

    private int squashed(float sum) {
        int q = (int) sum + 4096;
        return squash[q < 1 ? 1 : q > 8191 ? 8191 : q];
    }

    /** One bit, which is a one with so many chances in 65536. */
    private boolean isOne(int chances, boolean v) {
        int range = high - low;
        int mid = low + (range >>> 16) * chances + (((range & 0xFFFF) * chances) >>> 16);
        boolean one = reads ? at + Integer.MIN_VALUE <= mid + Integer.MIN_VALUE : v;
        if (one) high = mid;
        else low = mid + 1;
        while ((low ^ high) >>> 24 == 0) {
            pass(high >>> 24);
            low <<= 8;
            high = (high << 8) | 255;
        }
        return one;
    }

    private void pass(int octet) {
        if (reads) at = (at << 8) | (octets[place++] & 255);
        else {
            if (place == octets.length) octets = Arrays.copyOf(octets, place * 2);
            octets[place++] = (byte) octet;
        }
    }

    /** All that was told, packed. */
    public byte[] finished() {
        for (int shift = 24; shift >= 0; shift -= 8) pass(high >>> shift);
        return Arrays.copyOf(octets, place);
    }
}
