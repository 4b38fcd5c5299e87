package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.MoneyTerms;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.Price;
import plumbleaf.web.page.Picture.Handle;
import plumbleaf.web.page.Picture.Told;
import plumbleaf.web.page.Picture.Way;

/** What can be taken hold of where each dollar goes: the shares that the contractor sets, by half a per cent. */
record PriceHandles(MoneyTerms terms, Price price) {
    private static final double STEP_PCT = 0.5;
    private static final double MOST_PCT = 60;

    /** @param perCent how far along the drawing a cent reaches */
    List<Handle> along(double perCent) {
        List<Handle> handles = new ArrayList<>();
        double costCents = price.cost().cents();
        double directCents = price.direct().cents();
        if (terms.contingency() > 0)
            handles.add(share(
                    "contingency",
                    "money.contingency",
                    "Contingency, of direct cost",
                    terms.contingency(),
                    directCents * perCent));
        if (terms.overhead() > 0 && terms.overheadPerDay().isZero())
            handles.add(
                    share("overhead", "money.overhead", "Overhead, of cost", terms.overhead(), costCents * perCent));
        if (terms.margin() > 0)
            handles.add(
                    share("profit", "money.margin", "Margin, of price", terms.margin(), centsOfAllMargin() * perCent));
        return List.copyOf(handles);
    }

    /** The steps that have one. */
    List<String> steps() {
        return along(1).stream()
                .map(handle -> handle.of().replace(".share", ""))
                .toList();
    }

    /**
     * How fast the profit grows with the margin, where it stands: of {@code profit = m (C + O) / (1 - m - r)} the derivative
     * {@code (C + O) (1 - r) / (1 - m - r)^2}, cost C, overhead O, reserve r. What is dragged far lands a little off the hand; the words
     * beside it are exact.
     */
    private double centsOfAllMargin() {
        Money before = price.cost().plus(price.overhead());
        double rest = 1 - terms.margin() - terms.reserve();
        return before.cents() * (1 - terms.reserve()) / (rest * rest);
    }

    private static Handle share(String step, String path, String name, double now, double inchesOfAll) {
        double perPct = inchesOfAll / 100;
        double pct = Math.round(now * 1e4) / 1e2;
        return new Handle(
                Waterfall.grip(step), path, name, new Way(perPct, 0), pct, STEP_PCT, STEP_PCT, MOST_PCT, Told.PERCENT);
    }
}
