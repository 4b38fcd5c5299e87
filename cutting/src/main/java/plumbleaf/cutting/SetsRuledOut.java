package plumbleaf.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets of bars that cannot hold the pieces, by worths found for others: whatever the worths, a set whose bars hold less worth at best than the pieces have does
 * not do. One look instead of a linear program. Source: J. F. Benders, Numerische Mathematik 4 (1962) 238-252, for cuts of this kind.
 */
final class SetsRuledOut {
    private record Held(List<Long> byKind, BigInteger needed) {
        Held {
            byKind = List.copyOf(byKind);
        }
    }

    private final Cutting cutting;
    private final List<Held> known = new ArrayList<>();

    SetsRuledOut(Cutting cutting) {
        this.cutting = cutting;
    }

    /** Stands for a kind that was not looked at when the worths were found: it may hold any worth. */
    private static final long UNKNOWN = -1;

    /**
     * @param price of a bar of each kind, in the unit the worths were found in
     * @param supply when they were found
     */
    void add(Bound bound, long[] price, int[] supply) {
        if (bound.isNone()) return;
        BigInteger needed = BigInteger.ZERO;
        for (int i = 0; i < bound.worth.length; i++)
            needed = needed.add(BigInteger.valueOf(bound.worth[i]).multiply(BigInteger.valueOf(cutting.demand[i])));
        List<Long> byKind = new ArrayList<>();
        for (int k = 0; k < price.length; k++)
            byKind.add(
                    supply[k] <= 0
                            ? UNKNOWN
                            : Math.subtractExact(Math.multiplyExact(price[k], bound.scale), bound.over[k]));
        known.add(new Held(byKind, needed));
    }

    boolean has(List<Integer> bars) {
        for (Held held : known) {
            if (tooLittle(held, bars)) return true;
        }
        return false;
    }

    private static boolean tooLittle(Held held, List<Integer> bars) {
        BigInteger sum = BigInteger.ZERO;
        for (int k = 0; k < bars.size(); k++) {
            long each = held.byKind().get(k);
            if (each == UNKNOWN && bars.get(k) > 0) return false;
            sum = sum.add(BigInteger.valueOf(each).multiply(BigInteger.valueOf(bars.get(k))));
        }
        return sum.compareTo(held.needed()) < 0;
    }
}
