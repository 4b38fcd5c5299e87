package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.job.Billing;
import plumbleaf.engine.pricing.Progress;
import plumbleaf.engine.pricing.Statement;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;

/** Bills by what stands and what lies ready, and what has to be looked at first. */
final class ProgressPanels {
    private ProgressPanels() {}

    static Panel progress(Opened opened, Design design) {
        Billing billing = design.job().money().billing();
        Panel panel = Panel.of("Progress", "What is installed and what is stored, by a schedule of values")
                .withEntries(List.of(Ledger.MEASURED.entry(opened)))
                .withStrips(Listed.strips(opened, Ledger.MEASURED, "money.billing.measured", "Line"));
        if (billing.measured().isEmpty()) return panel;
        Progress progress = Progress.of(
                Statement.of(design.quote().price(), design.job().log().changes(), billing), billing);
        List<Table.Line> lines = new ArrayList<>();
        for (Progress.Line line : progress.lines())
            lines.add(new Table.Line(
                    "",
                    List.of(
                            line.of().what(),
                            DecimalText.upTo(line.of().quantity(), 2) + " "
                                    + line.of().unit(),
                            line.value().text(),
                            line.installed().text(),
                            line.stored().text())));
        return panel.withTables(List.of(new Table(
                        "Schedule of values",
                        List.of("Work", "In the contract", "Value", "Installed", "Stored"),
                        lines)))
                .withRows(List.of(
                        Row.of("progress.values", "All lines", progress.values().text()),
                        Row.of(
                                "progress.apart",
                                "Of the contract, in no line",
                                progress.apart().text()),
                        Row.of(
                                "progress.earned",
                                "Installed and stored",
                                progress.earned().text()),
                        Row.of("progress.billed", "Billed", progress.billed().text()),
                        Row.of("progress.next", "To bill next", progress.next().text()),
                        Row.of(
                                "progress.retained",
                                "Kept back of what is installed and stored",
                                progress.retained().text())));
    }

    static Panel submittals(Opened opened, Design design) {
        List<Row> rows = new ArrayList<>();
        List<Billing.Submittal> all = design.job().money().billing().submittals();
        for (int i = 0; i < all.size(); i++)
            rows.add(Row.of("submittal." + i, all.get(i).what(), all.get(i).words()));
        return Panel.of("Submittals", "")
                .withEntries(List.of(Ledger.SUBMITTAL.entry(opened)))
                .withRows(rows)
                .withStrips(Listed.strips(opened, Ledger.SUBMITTAL, "money.billing.submittals", "Submittal"));
    }
}
