package plumbleaf.cutting;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;

/**
 * A cutting task as whole numbers: sizes (each piece with the kerf behind it), wide to narrow, how many of each, and kinds of bar with room for sizes. All
 * lengths are divided by their greatest common divisor.
 */
final class Cutting {
    /** So many bars that no limit is ever met. */
    static final int UNLIMITED = Integer.MAX_VALUE;

    final long[] size;
    final int[] demand;
    final long[] room;
    final long[] price;
    final int[] supply;

    Cutting(long[] size, int[] demand, long[] room, long[] price, int[] supply) {
        long divisor = 0;
        for (long each : size) divisor = gcd(divisor, each);
        for (long each : room) divisor = gcd(divisor, Math.max(0, each));
        divisor = Math.max(1, divisor);
        this.size = divided(size, divisor);
        this.room = divided(room, divisor);
        this.demand = demand.clone();
        this.price = price.clone();
        this.supply = supply.clone();
    }

    private Cutting(Cutting from, int[] demand, long[] price, int[] supply) {
        this.size = from.size;
        this.room = from.room;
        this.demand = demand;
        this.price = price;
        this.supply = supply;
    }

    /** The same pieces, with exactly these bars at hand; the price of a bar is its room, so that cost is room used. */
    Cutting withBars(int[] bars) {
        return new Cutting(this, demand, room.clone(), bars.clone());
    }

    /**
     * The same pieces on a grid of so many steps to the longest bar. Sizes rounded up: every plan of these is a plan of the true ones. Rounded down: no true plan
     * costs less than the least of these.
     */
    Cutting onGrid(int steps, boolean up) {
        long step = Math.max(1, widest() / steps);
        return new Cutting(
                Arrays.stream(size)
                        .map(each -> up ? -Math.floorDiv(-each, step) : Math.max(0, each / step))
                        .toArray(),
                demand,
                divided(room, step),
                price,
                supply);
    }

    /** What is left when these bars are cut. */
    Cutting without(List<Column> bars) {
        int[] left = demand.clone();
        int[] atHand = supply.clone();
        for (Column bar : bars) {
            bar.takeFrom(left);
            if (atHand[bar.kind] != UNLIMITED) atHand[bar.kind]--;
        }
        return new Cutting(this, left, price, atHand);
    }

    /** No pieces and no bars: what stands in for a cutting whose table would be too large. */
    Cutting without() {
        return new Cutting(new long[0], new int[0], new long[0], new long[0], new int[0]);
    }

    /** Price of the dearest bar, at least 1. */
    long dearest() {
        long dearest = 1;
        for (long each : price) dearest = Math.max(dearest, each);
        return dearest;
    }

    /** Every cost is a multiple of this. */
    long step() {
        long step = 0;
        for (long each : price) step = gcd(step, each);
        return Math.max(1, step);
    }

    int sizes() {
        return size.length;
    }

    /** Whether every size goes into the longest bar. */
    boolean everySizeFits() {
        return size.length == 0 || size[0] <= widest();
    }

    /** Room of the longest bar; zero without any. */
    long widest() {
        return Arrays.stream(room).max().orElse(0);
    }

    /** Bars of one length, as many as are wanted. */
    boolean isOneKind() {
        return kinds() == 1 && supply[0] == UNLIMITED;
    }

    int kinds() {
        return room.length;
    }

    long volume() {
        long sum = 0;
        for (int i = 0; i < size.length; i++) sum = Math.addExact(sum, Math.multiplyExact(size[i], (long) demand[i]));
        return sum;
    }

    int pieces() {
        return Arrays.stream(demand).sum();
    }

    private static long gcd(long a, long b) {
        return BigInteger.valueOf(a).gcd(BigInteger.valueOf(b)).longValueExact();
    }

    private static long[] divided(long[] values, long divisor) {
        return Arrays.stream(values).map(each -> Math.floorDiv(each, divisor)).toArray();
    }
}
