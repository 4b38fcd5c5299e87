package plumbleaf.engine.bars;

import plumbleaf.engine.money.Money;

/**
 * A kind of bar to cut from.
 *
 * @param id unique among the bars of a task
 * @param price of one; zero for what is already owned
 * @param fromOffcut left over from another job: it has a sawn end, so it is not trimmed again
 */
public record StockBar(String id, long lengthNm, Money price, Supply supply, boolean fromOffcut) {
    public StockBar {
        if (lengthNm <= 0) throw new IllegalArgumentException("Bar " + id + " has no length: " + lengthNm);
        if (price.cents() < 0) throw new IllegalArgumentException("Bar " + id + " has a price below zero");
    }
}
