package plumbleaf.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets of bars that cannot hold the pieces, by worths found for others: whatever the worths, a set whose bars hold less worth at best than the pieces have does
 * not do. One look instead of a linear program. Source: J. F. Benders, Numerische Mathematik 4 (1962) 238-252, for cuts of this kind.
 */
final class SetsRuledOut {
    /** Of the sums in floating point, on the safe side. */
    private static final double ROUNDING = 1e-9;

    /** Sums of worths to a step. */
    private static final int SUMS_A_STEP = 8;

    private final Cutting cutting;
    private final Effort effort;

    /** Kinds that sets are chosen from, in this order. */
    private int[] kinds = {};

    /** What ruled a set out last comes first. */
    private final List<Held> known = new ArrayList<>();

    private long sums;

    /** What a bar of each kind can hold at the most ({@link Bound#ANY} where that is not known), and what the pieces need. */
    private final class Held {
        final long[] byKind;
        final BigInteger needed;
        final double[] about;

        /** A little less than what is needed. */
        final double neededAbout;

        /** For each place among the kinds the most that a bar from there on holds for the cent. */
        double[] forACent = {};

        Held(long[] byKind, BigInteger needed) {
            this.byKind = byKind;
            this.needed = needed;
            this.neededAbout = needed.doubleValue() * (1 - ROUNDING);
            this.about = new double[byKind.length];
            for (int k = 0; k < about.length; k++)
                about[k] = byKind[k] == Bound.ANY ? Double.POSITIVE_INFINITY : byKind[k];
            inOrder();
        }

        void inOrder() {
            forACent = new double[kinds.length + 1];
            for (int place = kinds.length - 1; place >= 0; place--)
                forACent[place] = Math.max(forACent[place + 1], about[kinds[place]] / cutting.price[kinds[place]]);
        }

        double couldHold(int[] bars) {
            double sum = 0;
            for (int k = 0; k < bars.length; k++) if (bars[k] > 0) sum += about[k] * bars[k];
            return sum;
        }

        boolean tooLittle(int[] bars) {
            BigInteger sum = BigInteger.ZERO;
            for (int k = 0; k < bars.length; k++) {
                if (bars[k] == 0) continue;
                if (byKind[k] == Bound.ANY) return false;
                sum = sum.add(BigInteger.valueOf(byKind[k]).multiply(BigInteger.valueOf(bars[k])));
            }
            return sum.compareTo(needed) < 0;
        }
    }

    SetsRuledOut(Cutting cutting, Effort effort) {
        this.cutting = cutting;
        this.effort = effort;
    }

    /** The kinds of bar that cost something, in the order in which sets are chosen. */
    void choosingFrom(int[] inOrder) {
        kinds = inOrder.clone();
        for (Held held : known) held.inOrder();
    }

    /** By length: what a bar of each kind can be filled to. */
    void addLength(long[] fill) {
        known.add(new Held(fill.clone(), BigInteger.valueOf(cutting.volume())));
    }

    /**
     * @param price of a bar of each kind, in the unit the worths were found in
     */
    void add(Bound bound, long[] price) {
        if (!bound.isNone()) known.add(new Held(bound.held(price), bound.needed(cutting.demand)));
    }

    /** Whether no set does that holds these bars and, of the kinds from this place on, others for so many cents. */
    boolean isHopeless(int[] bars, int place, long cents) {
        for (int n = 0; n < known.size(); n++) {
            Held held = known.get(n);
            double more = cents > 0 ? held.forACent[place] * cents : 0;
            if (held.couldHold(bars) + more >= held.neededAbout) continue;
            looked((n + 1) * (long) bars.length);
            known.set(n, known.get(0));
            known.set(0, held);
            return true;
        }
        looked(known.size() * (long) bars.length);
        return false;
    }

    boolean has(int[] bars) {
        looked(known.size() * (long) bars.length * SUMS_A_STEP);
        for (Held held : known) {
            if (held.tooLittle(bars)) return true;
        }
        return false;
    }

    private void looked(long more) {
        sums += more;
        effort.add(sums / SUMS_A_STEP);
        sums %= SUMS_A_STEP;
    }
}
