package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.labour.TaskVariance;
import plumbleaf.engine.labour.Variances;
import plumbleaf.engine.pricing.Category;
import plumbleaf.engine.pricing.Payment;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.PriceLine;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.schedule.PlannedTask;
import plumbleaf.engine.schedule.Schedule;
import plumbleaf.jobfile.offer.Offers;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;
import plumbleaf.web.page.Unit;

/** Where each dollar of the price goes. */
final class MoneyRoom {
    private MoneyRoom() {}

    static List<Panel> panels(Opened opened, Offers offers) {
        List<Panel> panels = new ArrayList<>();
        opened.design().ifPresent(design -> panels.add(price(design.quote().price())));
        panels.add(OfferPanels.options(opened, offers));
        panels.add(Panel.of("Terms", "money")
                .withNotes(Notes.inAreas(opened.findings(), List.of("money", "price", "labour")))
                .withFields(List.of(
                        opened.field("money.overhead", "Overhead, of cost", Unit.PERCENT, "money"),
                        opened.field("money.margin", "Margin, of price", Unit.PERCENT, "money"),
                        opened.field("money.contingency", "Contingency, of direct cost", Unit.PERCENT, "money"),
                        opened.fields()
                                .choice(
                                        "money.reserve",
                                        "Warranty reserve, of price",
                                        Unit.PERCENT,
                                        "money",
                                        List.of(),
                                        "none"),
                        opened.field("money.tax", "Tax", Unit.PERCENT, "money"),
                        opened.fields()
                                .choice(
                                        "money.wage",
                                        "Certified wage, if one holds",
                                        Unit.WORDS,
                                        "money",
                                        List.of(),
                                        "none: the price book's"),
                        opened.field("money.priceBook", "Price book", Unit.WORDS, "money"),
                        opened.field("money.validUntil", "Good through", Unit.WORDS, "money"))));
        opened.design().ifPresent(design -> {
            panels.add(OfferPanels.allowances(opened, design.quote().price()));
            panels.add(stages(design.quote().price()));
            panels.add(OfferPanels.bills(opened, design));
            panels.add(OfferPanels.calls(opened, design.job()));
            panels.add(hours(design));
            panels.add(days(design.quote().schedule()));
            panels.add(lines(design.quote().price()));
        });
        return panels;
    }

    private static Panel price(Price price) {
        return Panel.of("Price", "")
                .withRows(List.of(
                        Row.of("money.direct", "Direct cost", price.direct().text()),
                        Row.of(
                                "money.cost",
                                "Cost with contingency",
                                price.cost().text()),
                        Row.of("money.overhead", "Overhead", price.overhead().text()),
                        Row.of("money.profit", "Profit", price.profit().text()),
                        Row.of("money.price", "Price", price.price().text()),
                        Row.of("money.tax", "Tax", price.tax().text()),
                        Row.of("money.total", "Total", price.total().text())));
    }

    private static Panel stages(Price price) {
        List<Row> rows = new ArrayList<>();
        for (Payment payment : price.stages())
            rows.add(Row.of(
                    "stage." + payment.when(), payment.when(), payment.amount().text()));
        return Panel.of("Payments", "").withRows(rows);
    }

    private static Panel hours(Design design) {
        List<Table.Line> lines = new ArrayList<>();
        for (TaskVariance task :
                Variances.of(design.quote().labour(), design.job().log().hours()))
            lines.add(new Table.Line(
                    "",
                    List.of(
                            task.name(),
                            DecimalText.upTo(task.estimatedQuantity(), 1),
                            DecimalText.fixed(task.estimatedHours(), 1),
                            task.takenHours() == 0 ? "" : DecimalText.fixed(task.takenHours(), 1),
                            task.takenHours() == 0 ? "" : over(task.overHours()))));
        return Panel.of("Hours", "")
                .withTables(List.of(new Table(
                        "Of one person; over is beyond what the estimate allows for what is done",
                        List.of("Task", "Quantity", "Estimated", "Taken", "Over"),
                        lines)));
    }

    private static String over(double hours) {
        return (hours > 0 ? "+" : "") + DecimalText.fixed(hours, 1);
    }

    private static Panel days(Schedule schedule) {
        List<Table.Line> lines = new ArrayList<>();
        for (PlannedTask task : schedule.tasks())
            lines.add(new Table.Line(
                    "",
                    List.of(
                            task.name(),
                            DecimalText.upTo(task.days(), 1),
                            task.first().match(said -> said.is().toString(), unsaid -> ""))));
        return Panel.of("Days", "").withTables(List.of(new Table("Crew-days", List.of("Work", "Days", "From"), lines)));
    }

    /** Every step of the waterfall that is direct cost, opened into its lines. */
    private static Panel lines(Price price) {
        List<Table> tables = new ArrayList<>();
        for (Category category : Category.values()) {
            List<Table.Line> lines = new ArrayList<>();
            for (PriceLine line : price.lines()) {
                if (line.category() == category)
                    lines.add(new Table.Line(
                            line.causes().size() == 1 ? line.causes().get(0) : "",
                            List.of(
                                    line.name(),
                                    DecimalText.upTo(line.quantity(), 2) + " " + line.unit(),
                                    "$" + line.price().plain(),
                                    line.amount().text())));
            }
            if (!lines.isEmpty())
                tables.add(new Table(
                        category.words() + ": " + price.direct(category).text(),
                        List.of("Item", "Quantity", "Each", "Amount"),
                        lines));
        }
        return Panel.of("Direct cost, line by line", "").withTables(tables);
    }
}
