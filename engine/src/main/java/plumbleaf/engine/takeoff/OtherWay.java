package plumbleaf.engine.takeoff;

import plumbleaf.engine.money.Money;

/**
 * Another way the same thing is sold, and what it would have cost: bags where ready-mix was taken, another supplier's box.
 *
 * @param cheaperFrom net need from which this way costs less than the one taken; zero where it never does within a hundred times the need
 */
public record OtherWay(Sold sold, long units, Money cost, double cheaperFrom) {
    private static final int STEPS = 2000;
    private static final double REACH = 100;

    /** Found by going up in whole units of the smaller of the two. */
    static OtherWay of(Sold other, Sold taken, double net) {
        double step = Math.min(other.contents(), taken.contents());
        double from = 0;
        for (int n = 1; n <= STEPS && from == 0; n++) {
            double need = n * step;
            if (need > net * REACH) break;
            if (need < net) continue;
            if (other.costOf(other.unitsFor(need)).compareTo(taken.costOf(taken.unitsFor(need))) < 0) from = need;
        }
        long units = other.unitsFor(net);
        return new OtherWay(other, units, other.costOf(units), from);
    }
}
