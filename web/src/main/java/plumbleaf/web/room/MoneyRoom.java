package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.labour.TaskVariance;
import plumbleaf.engine.labour.Variances;
import plumbleaf.engine.pricing.Payment;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.schedule.PlannedTask;
import plumbleaf.engine.schedule.Schedule;
import plumbleaf.engine.takeoff.ItemVariance;
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
        opened.design()
                .ifPresent(design -> panels.add(PriceFolds.panel(
                        design.quote().price(),
                        design.job().money(),
                        design.quote().schedule().siteDays())));
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
            panels.add(ProgressPanels.progress(opened, design));
            panels.add(ProgressPanels.submittals(opened, design));
            panels.add(OfferPanels.notices(opened, design));
            panels.add(OfferPanels.calls(opened, design.job()));
            panels.add(hours(design));
            panels.add(materials(design));
            panels.add(days(opened, design.quote().schedule()));
        });
        return panels;
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

    /** What was used against what was ordered; written down under Stock, on a phone. */
    private static Panel materials(Design design) {
        List<Table.Line> lines = new ArrayList<>();
        for (ItemVariance item :
                ItemVariance.of(design.quote().takeoff(), design.job().log().used())) {
            boolean said = item.records() > 0;
            lines.add(new Table.Line(
                    "",
                    List.of(
                            item.name(),
                            DecimalText.upTo(item.ordered(), 2) + " " + item.unit(),
                            said ? DecimalText.upTo(item.used(), 2) : "",
                            said ? signed(item.over()) : "",
                            said ? item.worth().signedText() : "")));
        }
        return Panel.of("Materials", "")
                .withTables(List.of(new Table(
                        "Ordered, and used as written down on site; over is beyond the order",
                        List.of("Item", "Ordered", "Used", "Over", "Worth"),
                        lines)));
    }

    private static String signed(double units) {
        return (units > 0 ? "+" : "") + DecimalText.upTo(units, 2);
    }

    private static String over(double hours) {
        return (hours > 0 ? "+" : "") + DecimalText.fixed(hours, 1);
    }

    private static Panel days(Opened opened, Schedule schedule) {
        List<Table.Line> lines = new ArrayList<>();
        for (PlannedTask task : schedule.tasks())
            lines.add(new Table.Line(
                    "",
                    List.of(
                            task.name(),
                            DecimalText.upTo(task.days(), 1),
                            task.first().match(said -> said.is().toString(), unsaid -> ""))));
        List<Row> way = opened.findings().stream()
                .filter(finding -> finding.id().equals("schedule.access"))
                .map(finding -> new Row("schedule.access", "The way to the line", "", finding.message(), ""))
                .toList();
        return Panel.of("Days", "")
                .withRows(way)
                .withFields(List.of(
                        opened.fields()
                                .choice(
                                        "site.start",
                                        "Work may start on",
                                        Unit.WORDS,
                                        "site",
                                        List.of(),
                                        "no day agreed"),
                        opened.fields()
                                .choice(
                                        "site.access.passage",
                                        "Narrowest place on the way",
                                        Unit.INCHES,
                                        "site",
                                        List.of(),
                                        "nothing in the way"),
                        opened.fields()
                                .choice(
                                        "site.access.machine",
                                        "Width the digger needs",
                                        Unit.INCHES,
                                        "site",
                                        List.of(),
                                        "36 in."),
                        opened.fields()
                                .choice(
                                        "site.access.carry",
                                        "Carried from the truck",
                                        Unit.FEET,
                                        "site",
                                        List.of(),
                                        "the truck stands beside")))
                .withTables(List.of(new Table("Crew-days", List.of("Work", "Days", "From"), lines)));
    }
}
