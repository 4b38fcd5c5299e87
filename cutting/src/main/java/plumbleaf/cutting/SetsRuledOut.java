package plumbleaf.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets of bars that cannot hold the pieces, by worths found for others: whatever the worths, a set whose bars hold less worth at best than the pieces have does
 * not do. One look instead of a linear program. Source: J. F. Benders, Numerische Mathematik 4 (1962) 238-252, for cuts of this kind.
 */
final class SetsRuledOut {
    /** Stands for a kind that was not looked at when the worths were found: it may hold any worth. */
    private static final long UNKNOWN = -1;

    /** Of the sums in floating point, on the safe side. */
    private static final double ROUNDING = 1e-9;

    /** What a bar of each kind can hold at the most, and what the pieces need; {@code about} a little less. */
    private record Held(List<Long> byKind, BigInteger needed, double about) {
        Held {
            byKind = List.copyOf(byKind);
        }
    }

    private final Cutting cutting;
    private final List<Held> known = new ArrayList<>();

    SetsRuledOut(Cutting cutting) {
        this.cutting = cutting;
    }

    /** By length: what a bar of each kind can be filled to. */
    void addLength(long[] fill) {
        List<Long> byKind = new ArrayList<>();
        for (long each : fill) byKind.add(each);
        add(byKind, BigInteger.valueOf(cutting.volume()));
    }

    /**
     * @param price of a bar of each kind, in the unit the worths were found in
     */
    void add(Bound bound, long[] price) {
        if (bound.isNone()) return;
        BigInteger needed = BigInteger.ZERO;
        for (int i = 0; i < bound.worth.length; i++)
            needed = needed.add(BigInteger.valueOf(bound.worth[i]).multiply(BigInteger.valueOf(cutting.demand[i])));
        List<Long> byKind = new ArrayList<>();
        for (int k = 0; k < price.length; k++)
            byKind.add(
                    bound.over[k] == Bound.UNKNOWN
                            ? UNKNOWN
                            : Math.subtractExact(Math.multiplyExact(price[k], bound.scale), bound.over[k]));
        add(byKind, needed);
    }

    private void add(List<Long> byKind, BigInteger needed) {
        known.add(new Held(byKind, needed, needed.doubleValue() * (1 - ROUNDING)));
    }

    /**
     * Whether no set does that holds these bars and others for so many cents.
     *
     * @param kinds of which, from this place on, the others are
     */
    boolean isHopeless(int[] bars, int[] kinds, int place, long cents) {
        for (Held held : known) {
            double more = 0;
            for (int n = place; n < kinds.length && cents > 0; n++) more = Math.max(more, forACent(held, kinds[n]));
            if (couldHold(held, bars) + more * cents < held.about()) return true;
        }
        return false;
    }

    private double forACent(Held held, int kind) {
        long each = held.byKind().get(kind);
        return each == UNKNOWN ? Double.POSITIVE_INFINITY : (double) each / cutting.price[kind];
    }

    private static double couldHold(Held held, int[] bars) {
        double sum = 0;
        for (int k = 0; k < bars.length; k++) {
            if (bars[k] == 0) continue;
            long each = held.byKind().get(k);
            if (each == UNKNOWN) return Double.POSITIVE_INFINITY;
            sum += (double) each * bars[k];
        }
        return sum;
    }

    boolean has(int[] bars) {
        for (Held held : known) {
            if (tooLittle(held, bars)) return true;
        }
        return false;
    }

    private static boolean tooLittle(Held held, int[] bars) {
        BigInteger sum = BigInteger.ZERO;
        for (int k = 0; k < bars.length; k++) {
            if (bars[k] == 0) continue;
            long each = held.byKind().get(k);
            if (each == UNKNOWN) return false;
            sum = sum.add(BigInteger.valueOf(each).multiply(BigInteger.valueOf(bars[k])));
        }
        return sum.compareTo(held.needed()) < 0;
    }
}
