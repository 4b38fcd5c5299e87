package plumbleaf.engine.takeoff;

import plumbleaf.engine.money.Money;

/**
 * Another way the same thing is sold, and what it would have cost: bags where ready-mix was taken, another supplier's box.
 *
 * @param cheaperFrom net need from which this way costs less than the one taken; zero where it does not up to {@code lookedTo}
 * @param lookedTo the largest net need that was compared: two thousand of the smaller package more than the need, or a hundred times the need
 */
public record OtherWay(Sold sold, long units, Money cost, double cheaperFrom, double lookedTo) {
    private static final int STEPS = 2000;
    private static final double REACH = 100;

    /** Found by going up from the need in whole units of the smaller of the two. */
    static OtherWay of(Sold other, Sold taken, double net) {
        double step = Math.min(other.contents(), taken.contents());
        double first = Math.max(1, Math.ceil(net / step));
        double from = 0;
        double looked = net;
        for (int n = 0; n < STEPS && from == 0; n++) {
            double need = (first + n) * step;
            if (need > net * REACH) break;
            looked = need;
            if (other.costOf(other.unitsFor(need)).compareTo(taken.costOf(taken.unitsFor(need))) < 0) from = need;
        }
        long units = other.unitsFor(net);
        return new OtherWay(other, units, other.costOf(units), from, looked);
    }
}
