package plumbleaf.web.room;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Actual;
import plumbleaf.engine.job.JobLog;
import plumbleaf.engine.job.MoistureReading;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.UsedMaterial;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Table;

/** What the crew writes down on site: hours, materials, moisture of the wood. Nothing here is money. */
final class SiteLog {
    private SiteLog() {}

    static Panel panel(Opened opened) {
        List<Table> tables = new ArrayList<>();
        opened.job().ifPresent(job -> {
            JobLog log = job.log();
            if (!log.hours().isEmpty())
                tables.add(new Table(
                        "Hours written down",
                        List.of("Day", "Task", "Done", "Hours", "Note"),
                        log.hours().stream().map(SiteLog::hours).toList()));
            if (!log.used().isEmpty())
                tables.add(new Table(
                        "Material used",
                        List.of("Day", "Item", "Used", "Returned"),
                        log.used().stream().map(SiteLog::used).toList()));
            if (!log.moisture().isEmpty())
                tables.add(new Table(
                        "Moisture of the wood",
                        List.of("Day", "Where", "Reading"),
                        log.moisture().stream().map(SiteLog::moisture).toList()));
        });
        return Panel.of("Written down on site", "")
                .withEntries(
                        List.of(Ledger.HOURS.entry(opened), Ledger.USED.entry(opened), Ledger.MOISTURE.entry(opened)))
                .withTables(tables);
    }

    private static Table.Line hours(Actual actual) {
        return line(
                day(actual.date()),
                actual.task(),
                DecimalText.upTo(actual.quantity(), 2),
                DecimalText.upTo(actual.hours(), 2),
                actual.note());
    }

    private static Table.Line used(UsedMaterial used) {
        return line(
                day(used.date()), used.item(), DecimalText.upTo(used.units(), 2), DecimalText.upTo(used.returned(), 2));
    }

    private static Table.Line moisture(MoistureReading reading) {
        return line(reading.date().toString(), reading.where(), DecimalText.upTo(reading.moisture() * 100, 1) + " %");
    }

    private static String day(Stated<LocalDate> date) {
        return date.match(said -> said.is().toString(), open -> "");
    }

    private static Table.Line line(String... cells) {
        return new Table.Line("", List.of(cells));
    }
}
