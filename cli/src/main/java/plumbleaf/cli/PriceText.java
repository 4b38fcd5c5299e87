package plumbleaf.cli;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.Offered;
import plumbleaf.engine.design.Verdict;
import plumbleaf.engine.pricing.Category;
import plumbleaf.engine.pricing.Payment;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.PriceLine;
import plumbleaf.engine.pricing.Step;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.jobfile.offer.FitPrices;
import plumbleaf.jobfile.offer.SpacingPrices;
import plumbleaf.jobfile.offer.Together;
import plumbleaf.jobfile.offer.WayWords;

/** The price for a terminal: lines by category, then the way from cost to total, then the payments. */
final class PriceText {
    private PriceText() {}

    static List<String> lines(Price price) {
        List<String> lines = new ArrayList<>();
        for (Category category : Category.values()) {
            Columns columns = new Columns("lrlrr");
            for (PriceLine line : price.lines()) {
                if (line.category() == category)
                    columns.row(
                            line.name(),
                            DecimalText.upTo(line.quantity(), 2),
                            line.unit(),
                            "$" + line.price().plain(),
                            line.amount().text());
            }
            if (columns.isEmpty()) continue;
            lines.add(category.words() + ": " + price.direct(category).text());
            lines.addAll(columns.lines(2));
        }
        lines.add("");
        Columns way = new Columns("lr");
        for (Step step : price.waterfall()) way.row(step.words(), step.amount().text());
        way.row("Total", price.total().text());
        lines.addAll(way.lines(0));
        lines.add("");
        Columns stages = new Columns("lr");
        for (Payment payment : price.stages())
            stages.row("Payment " + payment.when(), payment.amount().text());
        lines.addAll(stages.lines(0));
        return lines;
    }

    /** From the job itself over each option ticked to the total of all of them, to the cent; or why they cannot be built together. */
    static List<String> together(Together together) {
        if (!together.canBe()) return List.of("", "Not together: " + together.reason() + ".");
        Columns columns = new Columns("lr");
        columns.row("The job as described", together.base().text());
        for (int i = 0; i < together.ticked().size(); i++)
            columns.row(together.ticked().get(i).name(), together.alone().get(i).signedText());
        columns.row("Built together", together.together().signedText());
        columns.row("Total with tax", together.total().text());
        List<String> lines = new ArrayList<>(List.of("", "Together, designed and checked as one:"));
        lines.addAll(columns.lines(2));
        return lines;
    }

    /** What each run costs with every fit to the ground. */
    static List<String> fits(FitPrices prices) {
        Columns columns = new Columns("llrr");
        for (FitPrices.OfRun run : prices.runs())
            for (FitPrices.Way way : run.ways())
                columns.row(
                        run.run(),
                        way.fit().key() + (way.fit() == run.now() ? ", as it is" : ""),
                        way.total().text(),
                        WayWords.signed(way.change().price()));
        List<String> lines = new ArrayList<>(List.of("", "Each run fitted another way, the whole job priced anew:"));
        lines.addAll(columns.lines(2));
        return lines;
    }

    /** What each run costs with its posts nearer together, and whether fewest bays are cheapest. */
    static List<String> spacings(SpacingPrices prices, DisplayUnits display) {
        Columns columns = new Columns("llrr");
        List<String> words = new ArrayList<>();
        for (SpacingPrices.OfRun run : prices.runs()) {
            words.add(run.words(display));
            for (SpacingPrices.Way way : run.ways())
                columns.row(
                        run.run(),
                        way.bays() + " bays, " + display.length(way.longest()) + " at most"
                                + (way.equals(run.asItIs()) ? ", as it is" : ""),
                        way.total().text(),
                        WayWords.signed(way.change().price()));
        }
        List<String> lines = new ArrayList<>(List.of("", "Posts nearer together, the whole job priced anew:"));
        lines.addAll(columns.lines(2));
        lines.addAll(words);
        return lines;
    }

    /** Each option beside the job itself; one that fails is not for the customer yet. */
    static List<String> options(List<Offered> offered) {
        if (offered.isEmpty()) return List.of();
        Columns columns = new Columns("llrrl");
        for (Offered option : offered)
            columns.row(
                    option.option().id(),
                    option.option().name(),
                    option.difference().price().signedText(),
                    option.design().quote().price().total().text(),
                    option.design().verdict() == Verdict.FAILS ? "fails a check; not in the proposal" : "");
        List<String> lines = new ArrayList<>(List.of("", "Options, each designed and checked:"));
        lines.addAll(columns.lines(2));
        return lines;
    }
}
