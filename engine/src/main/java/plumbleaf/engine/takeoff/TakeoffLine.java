package plumbleaf.engine.takeoff;

import java.util.List;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Force;

/**
 * One line of the order.
 *
 * @param causes the parts it comes from; their quantities add up to {@code net}
 * @param net what the parts need; for bars the length of the pieces in feet
 * @param withWaste net with its waste, once; for bars the length of the bars, culls included
 * @param sold how it is bought
 * @param units order units, rounded up
 * @param cost units times price, to the cent
 * @param cut whether a cut plan says how many
 * @param fromYard how much of the need lies in the yard, in the unit of {@code net}
 * @param others other ways it is sold
 * @param need when it has to be there
 */
public record TakeoffLine(
        PartGroup group,
        List<Cause> causes,
        double net,
        double withWaste,
        Sold sold,
        long units,
        Money cost,
        boolean cut,
        double fromYard,
        List<OtherWay> others,
        NeedBy need) {
    public TakeoffLine {
        causes = List.copyOf(causes);
        others = List.copyOf(others);
    }

    /** Before the days are laid out. */
    TakeoffLine(
            PartGroup group,
            List<Cause> causes,
            double net,
            double withWaste,
            Sold sold,
            long units,
            Money cost,
            boolean cut,
            double fromYard,
            List<OtherWay> others) {
        this(group, causes, net, withWaste, sold, units, cost, cut, fromYard, others, NeedBy.UNKNOWN);
    }

    public TakeoffLine neededBy(NeedBy when) {
        return new TakeoffLine(group, causes, net, withWaste, sold, units, cost, cut, fromYard, others, when);
    }

    public String item() {
        return sold.item();
    }

    public Force weight() {
        return sold.weight().times((double) units);
    }

    /** Share that was added to the need before it was rounded up; for bars bad ones to be expected, once they are worth a spare. */
    public double wasteShare() {
        if (!cut) return sold.waste();
        return units == 0 ? 0 : sold.cullShare(withWaste / (1 + sold.waste()) / sold.contents());
    }

    /** Share of what is bought that is not in the job: waste, cut and rounding together. */
    public double unusedShare() {
        double bought = (double) units * sold.contents();
        return bought > 0 ? Math.max(0, 1 - (net - fromYard) / bought) : 0;
    }
}
