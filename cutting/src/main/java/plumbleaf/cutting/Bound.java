package plumbleaf.cutting;

import java.math.BigInteger;
import java.util.List;

/**
 * What no whole plan can cost less than, shown in whole numbers, so that it holds whatever the rounding of the linear program was: the Lagrangian bound for
 * worths y of zero or more, {@code sum y_i d_i + sum over limited kinds of s_k min(0, c_k - V_k(y))}, V_k the most worth a bar of the kind can hold. Where a
 * kind without limit would be oversold, all worths are cut down until it is not (A. A. Farley, Operations Research 38, 1990, 922-923).
 */
final class Bound {
    /** Nothing shown yet. */
    static final Bound NONE = new Bound(new long[0], new long[0], 0, 1);

    /** Of a piece of each size, {@code scale} to the cent. */
    final long[] worth;

    /** What a bar may hold of a kind of which there is none, where that was not looked for. */
    static final long ANY = Long.MAX_VALUE;

    /** For each kind of bar {@code min(0, c - V)}, {@code scale} to the cent; {@code -ANY} for some of which there is none. */
    final long[] over;

    /** The bound, {@code scale} to the cent. */
    final long scaled;

    final long scale;

    private Bound(long[] worth, long[] over, long scaled, long scale) {
        this.worth = worth;
        this.over = over;
        this.scaled = scaled;
        this.scale = scale;
    }

    /** Every piece at the least that its length of any bar costs, in whole steps: what no plan goes below. Limits on bars are not looked at. */
    static long byVolume(Cutting cutting) {
        boolean any = false;
        long price = 0;
        long room = 1;
        for (int k = 0; k < cutting.kinds(); k++) {
            if (cutting.supply[k] <= 0 || cutting.room[k] <= 0) continue;
            if (any && !less(cutting.price[k], cutting.room[k], price, room)) continue;
            any = true;
            price = cutting.price[k];
            room = cutting.room[k];
        }
        BigInteger sum = BigInteger.valueOf(cutting.volume()).multiply(BigInteger.valueOf(price));
        BigInteger whole = BigInteger.valueOf(room).multiply(BigInteger.valueOf(cutting.step()));
        long steps = sum.add(whole).subtract(BigInteger.ONE).divide(whole).longValueExact();
        return steps * cutting.step();
    }

    /** The same as worths: every size worth its share of a bar; for bars of one kind without limit. */
    static Bound ofVolume(Cutting cutting) {
        long[] worth = new long[cutting.sizes()];
        for (int i = 0; i < worth.length; i++) worth[i] = Math.multiplyExact(cutting.size[i], cutting.price[0]);
        long scaled = Math.multiplyExact(cutting.volume(), cutting.price[0]);
        return new Bound(worth, new long[1], scaled, cutting.room[0]);
    }

    /** @param best for each kind the most worth that fits in a bar of it, by an exact knapsack; {@link #ANY} for some of which there is none */
    static Bound of(Cutting cutting, int[] demand, int[] supply, long[] worth, long[] best, long scale) {
        long price = 1;
        long sold = 1;
        for (int k = 0; k < best.length; k++) {
            if (supply[k] != Cutting.UNLIMITED) continue;
            long full = cutting.price[k] * scale;
            if (full < best[k] && less(full, best[k], price, sold)) {
                price = full;
                sold = best[k];
            }
        }
        long[] worths = new long[worth.length];
        long sum = 0;
        for (int i = 0; i < worth.length; i++) {
            worths[i] = cut(worth[i], price, sold);
            sum = Math.addExact(sum, Math.multiplyExact(worths[i], (long) demand[i]));
        }
        long[] over = new long[best.length];
        for (int k = 0; k < best.length; k++) {
            if (supply[k] == Cutting.UNLIMITED) continue;
            if (best[k] == ANY) {
                over[k] = -ANY;
                continue;
            }
            over[k] = Math.min(0, cutting.price[k] * scale - cut(best[k], price, sold));
            sum = Math.addExact(sum, Math.multiplyExact(over[k], (long) Math.max(0, supply[k])));
        }
        return new Bound(worths, over, sum, scale);
    }

    /** Whether a / b is less than c / d. */
    private static boolean less(long a, long b, long c, long d) {
        return BigInteger.valueOf(a)
                        .multiply(BigInteger.valueOf(d))
                        .compareTo(BigInteger.valueOf(c).multiply(BigInteger.valueOf(b)))
                < 0;
    }

    private static long cut(long value, long top, long under) {
        if (top == under) return value;
        if (value < 2_000_000_000L && top < 4_000_000_000L) return value * top / under;
        return BigInteger.valueOf(value)
                .multiply(BigInteger.valueOf(top))
                .divide(BigInteger.valueOf(under))
                .longValueExact();
    }

    /** What these pieces are worth together, which may be more than a {@code long} holds. */
    BigInteger needed(int[] demand) {
        BigInteger sum = BigInteger.ZERO;
        for (int i = 0; i < worth.length; i++)
            sum = sum.add(BigInteger.valueOf(worth[i]).multiply(BigInteger.valueOf(demand[i])));
        return sum;
    }

    /**
     * The most worth a bar of each kind can hold; {@link #ANY} where that was not looked for.
     *
     * @param price of a bar of each kind, in the unit the worths were found in
     */
    long[] held(long[] price) {
        long[] held = new long[price.length];
        for (int k = 0; k < held.length; k++)
            held[k] = over[k] == -ANY ? ANY : Math.subtractExact(Math.multiplyExact(price[k], scale), over[k]);
        return held;
    }

    boolean isNone() {
        return worth.length == 0;
    }

    /** By the same worths, of what is left when these bars are cut. */
    Bound without(List<Column> bars) {
        long left = scaled;
        for (Column bar : bars) left -= worthOf(bar) + over[bar.kind];
        return new Bound(worth, over, left, scale);
    }

    /** What a bar costs more than its pieces are worth; a plan loses as much in all as it costs above the bound. */
    long loss(long[] price, Column bar) {
        return price[bar.kind] * scale - over[bar.kind] - worthOf(bar);
    }

    private long worthOf(Column bar) {
        long sum = 0;
        for (int k = 0; k < bar.size.length; k++) sum += bar.times[k] * worth[bar.size[k]];
        return sum;
    }

    /** In cents, rounding nothing. */
    double cents() {
        return isNone() ? Double.NEGATIVE_INFINITY : (double) scaled / scale;
    }

    boolean isMoreThan(Bound other) {
        return cents() > other.cents();
    }

    /** The least whole cost, a multiple of {@code step}. */
    long roundedUp(long step) {
        if (isNone()) return 0;
        long unit = scale * step;
        return -Math.floorDiv(-scaled, unit) * step;
    }
}
