package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.MoneyTerms;
import plumbleaf.engine.job.TaxRule;
import plumbleaf.engine.pricing.Category;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.PriceLine;
import plumbleaf.engine.pricing.Step;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;

/** The way from cost to total, each number opening into the lines, or the rule, it is made of. */
final class PriceFolds {
    private PriceFolds() {}

    static Panel panel(Price price, MoneyTerms terms, double siteDays) {
        List<Panel.Fold> folds = new ArrayList<>();
        for (Step step : price.waterfall()) {
            List<Table> lines = new ArrayList<>();
            Category.of(step.key()).ifPresent(category -> lines.add(lines(price, category)));
            folds.add(new Panel.Fold(
                    step.key(),
                    "money." + step.key() + "." + step.words(),
                    step.words(),
                    step.amount().text(),
                    about(step, price, terms, siteDays),
                    lines));
        }
        return Panel.of("Price", "")
                .withFolds(folds)
                .withRows(List.of(
                        Row.of("money.direct", "Direct cost", price.direct().text()),
                        Row.of(
                                "money.cost",
                                "Cost with contingency",
                                price.cost().text()),
                        Row.of("money.price", "Price before tax", price.price().text()),
                        Row.of("money.total", "Total with tax", price.total().text())));
    }

    private static Table lines(Price price, Category category) {
        List<Table.Line> lines = new ArrayList<>();
        for (PriceLine line : price.lines()) {
            if (line.category() != category) continue;
            lines.add(new Table.Line(
                    String.join(" ", line.causes()),
                    List.of(
                            line.name(),
                            DecimalText.upTo(line.quantity(), 2) + " " + line.unit(),
                            "$" + line.price().plain(),
                            line.amount().text())));
        }
        return new Table(
                lines.size() == 1 ? "One line" : lines.size() + " lines; they add up to the cent",
                List.of("Item", "Quantity", "Each", "Amount"),
                lines);
    }

    /** The rule behind a step that is no sum of lines. */
    private static String about(Step step, Price price, MoneyTerms terms, double siteDays) {
        return switch (step.key()) {
            case "contingency" ->
                percent(terms.contingency()) + " of the direct cost of "
                        + price.direct().text();
            case "overhead" ->
                terms.overheadPerDay().isZero()
                        ? percent(terms.overhead()) + " of the cost of "
                                + price.cost().text()
                        : terms.overheadPerDay().text() + " a day, " + DecimalText.upTo(siteDays, 1) + " days on site";
            case "profit" ->
                percent(terms.margin()) + " of the price: a margin. On cost and overhead it is a markup of "
                        + percent(terms.margin() / (1 - terms.margin() - terms.reserve()));
            case "reserve" -> percent(terms.reserve()) + " of the price, kept for calls under warranty";
            case "to-minimum" -> "the house does no job for less";
            case "rounding" -> "up to the house's next step";
            case "tax" ->
                terms.taxes().stream()
                        .filter(tax -> tax.name().equals(step.words()))
                        .map(PriceFolds::on)
                        .findFirst()
                        .orElse("");
            default -> "";
        };
    }

    private static String on(TaxRule tax) {
        return percent(tax.rate())
                + (tax.on().isEmpty()
                        ? " of the price's share of what the price book marks as taxed"
                        : " of the price's share of " + String.join(", ", tax.on()));
    }

    private static String percent(double share) {
        return DecimalText.upTo(share * 100, 2) + " %";
    }
}
