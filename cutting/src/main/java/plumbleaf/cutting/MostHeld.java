package plumbleaf.cutting;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * How much bars hold together at the most, in length or in worths, for just so much money: for the kinds from each place on. Up to some cost it is a table. Beyond, it
 * is what the money buys of the densest kind, less what other bars lose beside it. What these cost is whole bars of the densest kind and a rest, and for each rest the
 * least that is lost is known; so it is never too little, and just right where there is money enough.
 * Source: R. Bellman, Dynamic Programming (1957), for the table; P. C. Gilmore and R. E. Gomory, Operations Research 14 (1966) 1045-1074, for the rests; S. Boecker
 * and Zs. Liptak, Algorithmica 48 (2007) 413-432, for going round them; all from memory. Check: MostHeldTest.
 */
final class MostHeld {
    /** Of the table: eight megabytes. */
    private static final long MOST_CELLS = 1_000_000;

    /** Rests of one kind's price; with more of them what is held is told by the share alone. */
    private static final long MOST_RESTS = 50_000;

    /** Sums stay below this. */
    private static final double MOST_SUM = 4e18;

    /** Of a quotient, on the safe side. */
    private static final double ROUNDING = 1e-9;

    /** No bars of these kinds come to just this cost. */
    static final long NONE = -1;

    private final int[] kinds;
    private final long[] price;
    private final long[] hold;
    private final long needed;

    /** For each place and each cost, in steps. */
    private final long[][] table;

    /** For each place the densest kind from there on. */
    private final int[] densest;

    /** For each place and each rest of the densest kind's price, what is lost, times that price; empty where there are too many. */
    private final long[][] lost;

    /**
     * @param kinds in the order of the places
     * @param most bars of each kind
     * @param price of a bar of each kind, in steps
     * @param hold the most a bar of each kind holds
     * @param needed more than this is of no use
     * @param dearest cost in steps that is asked about, at the most
     */
    MostHeld(int[] kinds, int[] most, long[] price, long[] hold, long needed, long dearest, Effort effort) {
        this.kinds = kinds.clone();
        this.price = price.clone();
        // More than all pieces need is of no use to a set.
        this.hold = Arrays.stream(hold).map(each -> Math.min(each, needed)).toArray();
        this.needed = needed;
        int costs = (int) Math.min(dearest + 1, MOST_CELLS / (kinds.length + 1));
        this.table = new long[kinds.length + 1][costs];
        Arrays.fill(table[kinds.length], NONE);
        table[kinds.length][0] = 0;
        this.densest = new int[kinds.length];
        this.lost = new long[kinds.length][];
        for (int place = kinds.length - 1; place >= 0; place--) {
            raise(place, most[kinds[place]], effort);
            densest[place] = kinds[place];
            if (place + 1 < kinds.length && isDenser(densest[place + 1], kinds[place]))
                densest[place] = densest[place + 1];
            lost[place] = dearest < costs ? new long[0] : lost(place, dearest, effort);
        }
    }

    /** Exactly: what is told by the second densest as if it were the densest would be too little. */
    private boolean isDenser(int kind, int than) {
        BigInteger here = BigInteger.valueOf(hold[kind]).multiply(BigInteger.valueOf(price[than]));
        BigInteger there = BigInteger.valueOf(hold[than]).multiply(BigInteger.valueOf(price[kind]));
        return here.compareTo(there) > 0;
    }

    /** One kind more: as many bars as there are, in parts of one, two, four and the rest. */
    private void raise(int place, int most, Effort effort) {
        long[] here = table[place];
        System.arraycopy(table[place + 1], 0, here, 0, here.length);
        int kind = kinds[place];
        int rest = most;
        for (int part = 1; rest > 0; part *= 2) {
            int times = Math.min(part, rest);
            rest -= times;
            long by = price[kind] * times;
            if (by >= here.length) break;
            for (int cost = here.length - 1; cost >= by; cost--) {
                long before = here[(int) (cost - by)];
                if (before != NONE) here[cost] = Math.max(here[cost], Math.min(needed, before + hold[kind] * times));
            }
            effort.add(here.length / 64 + 1);
        }
    }

    /** What bars of the kinds from this place on lose against the densest, at the least, for each rest of its price. */
    private long[] lost(int place, long dearest, Effort effort) {
        int best = densest[place];
        long whole = price[best];
        long most = Math.max(dearest, Arrays.stream(price).max().orElse(0));
        if (whole > MOST_RESTS || (double) hold[best] * most > MOST_SUM) return new long[0];
        long[] least = new long[(int) whole];
        Arrays.fill(least, Long.MAX_VALUE);
        least[0] = 0;
        for (int n = place; n < kinds.length; n++) {
            int kind = kinds[n];
            if (kind == best) continue;
            long loss = hold[best] * price[kind] - hold[kind] * whole;
            goRound(least, (int) (price[kind] % whole), loss);
            effort.add(whole / 16 + 1);
        }
        return least;
    }

    /** With any number of bars more that cost so much over whole bars of the densest kind: twice round each ring of rests. */
    private static void goRound(long[] least, int by, long loss) {
        if (by == 0) return;
        boolean[] seen = new boolean[least.length];
        for (int start = 0; start < least.length; start++) {
            if (seen[start]) continue;
            int at = start;
            for (int round = 0; round < 2; ) {
                seen[at] = true;
                int next = at + by < least.length ? at + by : at + by - least.length;
                if (least[at] < Long.MAX_VALUE - loss) least[next] = Math.min(least[next], least[at] + loss);
                at = next;
                if (at == start) round++;
            }
        }
    }

    /** No less than what bars of the kinds from this place on hold for just so many steps, as far as it is needed; {@link #NONE} where none cost just that. */
    long atMost(int place, long cost) {
        if (cost < table[place].length) return table[place][(int) cost];
        if (place == kinds.length) return NONE;
        int best = densest[place];
        if (lost[place].length > 0) {
            long less = lost[place][(int) (cost % price[best])];
            if (less == Long.MAX_VALUE) return NONE;
            return Math.max(NONE, Math.min(needed, Math.floorDiv(hold[best] * cost - less, price[best])));
        }
        double share = (double) hold[best] / price[best] * cost * (1 + ROUNDING);
        return share >= needed ? needed : (long) share + 1;
    }

    /** The most a bar of this kind holds, or all that is needed. */
    long hold(int kind) {
        return hold[kind];
    }

    /** Whether bars that hold so much, and those from this place on for so many steps, cannot do. */
    boolean isTooLittle(long held, int place, long cost) {
        long more = atMost(place, cost);
        return more == NONE || held + more < needed;
    }
}
