package plumbleaf.engine.takeoff;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Length;

/** What lies in the yard, paid for and free to use: bars, offcuts, and what is counted. */
public record OnHand(List<HeldBar> bars, List<HeldGoods> goods) {
    /** An empty yard. */
    public static final OnHand NOTHING = new OnHand(List.of(), List.of());

    public OnHand {
        bars = List.copyOf(bars);
        goods = List.copyOf(goods);
    }

    /**
     * Bars of one length.
     *
     * @param mark what is written on it; no two of a yard are alike
     * @param offcut whether its end is sawn already, so that it is not trimmed again
     */
    public record HeldBar(String mark, String item, Length length, int count, boolean offcut) {
        public HeldBar {
            if (count < 0) throw new IllegalArgumentException("There cannot be " + count + " bars of " + mark);
        }

        StockBar stock() {
            return new StockBar(mark, length.nanometres(), Money.ZERO, Supply.atMost(count), offcut);
        }
    }

    /**
     * Bags, boxes, single pieces.
     *
     * @param contents how much of {@code of} one of them holds
     */
    public record HeldGoods(String mark, String item, int count, double contents, NetUnit of) {
        public HeldGoods {
            if (count < 0) throw new IllegalArgumentException("There cannot be " + count + " of " + mark);
            if (!(contents > 0)) throw new IllegalArgumentException(mark + " holds nothing");
        }
    }

    /** Bars of an item, as a cut plan takes them. */
    public List<StockBar> barsOf(String item) {
        List<StockBar> found = new ArrayList<>();
        for (HeldBar bar : bars) {
            if (bar.item().equals(item) && bar.count() > 0) found.add(bar.stock());
        }
        return found;
    }

    public List<HeldGoods> goodsOf(String item, NetUnit unit) {
        return goods.stream()
                .filter(held -> held.item().equals(item) && held.of() == unit && held.count() > 0)
                .toList();
    }

    public boolean isEmpty() {
        return bars.isEmpty() && goods.isEmpty();
    }
}
