package plumbleaf.engine.takeoff;

import java.math.BigDecimal;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.money.UnitPrice;
import plumbleaf.engine.quantity.Force;

/**
 * One way a material is sold: a row of the price book.
 *
 * @param item what it is: {@code F1083-REG-2}, {@code picket-1x6/western_redcedar}, {@code concrete}
 * @param name in the supplier's words
 * @param contents how much of {@code of} one order unit holds: 21 ft in a stick, 0.6 ft3 from a bag
 * @param least fewest order units that are delivered
 * @param waste share added before rounding up, culls and spills: 0.05 for 5 %; for bars culls alone, from half a bad stick up; their cutting waste is in the plan
 * @param weight of one order unit, for the truck
 * @param date the price was given, as the book writes it
 * @param source who gave it
 */
public record Sold(
        String item,
        String name,
        String supplier,
        OrderUnit unit,
        double contents,
        NetUnit of,
        long least,
        UnitPrice price,
        boolean taxed,
        double waste,
        Force weight,
        String date,
        String source) {
    /** A need a hair over a whole unit, from rounding in the last digit, is not another unit. */
    private static final double HAIR = 1e-9;

    /**
     * Bad sticks to be expected in an order before one is bought to spare: with one in twenty bad, one or two rails are no reason to buy another, ten are. Common
     * practice, no source.
     */
    private static final double CULLS_WORTH_A_SPARE = 0.5;

    public Sold {
        if (!(contents > 0)) throw new IllegalArgumentException(item + " is sold with nothing in it");
        if (!(waste >= 0 && waste < 1)) throw new IllegalArgumentException(item + " has a waste outside 0 to 1");
    }

    /** Net need with its waste. */
    public double withWaste(double net) {
        return net * (1 + waste);
    }

    /** Whole order units for a net need. */
    public long unitsFor(double net) {
        return Math.max(least, rounded(withWaste(net) / contents));
    }

    /** Share of bad ones added to the sticks of a cut plan: none until they are worth a spare. */
    double cullShare(double sticks) {
        return sticks * waste + HAIR < CULLS_WORTH_A_SPARE ? 0 : waste;
    }

    double withCulls(double sticks) {
        return sticks * (1 + cullShare(sticks));
    }

    /** Whole sticks to order for those of a cut plan. */
    long sticksFor(long sticks) {
        return Math.max(least, rounded(withCulls((double) sticks)));
    }

    private static long rounded(double units) {
        return (long) Math.ceil(units - HAIR * Math.max(1, units));
    }

    public Money costOf(long units) {
        return price.times(BigDecimal.valueOf(units));
    }

    /** The same at another price. */
    public Sold at(UnitPrice other) {
        return new Sold(item, name, supplier, unit, contents, of, least, other, taxed, waste, weight, date, source);
    }
}
