package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Offered;
import plumbleaf.engine.design.Verdict;
import plumbleaf.engine.job.Change;
import plumbleaf.engine.job.Complaint;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.Statement;
import plumbleaf.engine.pricing.UnitOffer;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.schedule.NoticeDate;
import plumbleaf.engine.schedule.WorkSpan;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.offer.Offers;
import plumbleaf.web.page.Panel;
import plumbleaf.web.page.Row;
import plumbleaf.web.page.Table;
import plumbleaf.web.page.Unit;

/** What is put before the customer beside the price, and what comes of it: options, allowances, bills, changes, calls. */
final class OfferPanels {
    private OfferPanels() {}

    static Panel options(Opened opened, Offers offers) {
        List<Table.Line> lines = new ArrayList<>();
        for (Offered offered : offers.offered())
            lines.add(new Table.Line(
                    "",
                    List.of(
                            offered.option().id(),
                            offered.option().name(),
                            offered.difference().price().signedText(),
                            offered.design().quote().price().total().text(),
                            offered.design().verdict() == Verdict.FAILS
                                    ? "fails a check; not in the proposal"
                                    : Verdicts.words(offered.design().verdict()))));
        List<Row> wrong = new ArrayList<>();
        for (InputError error : offers.errors())
            wrong.add(new Row("option." + wrong.size(), "Cannot be made", error.problem(), error.cure(), ""));
        Panel panel = Panel.of("Options", "").withRows(wrong).withEntries(List.of(Ledger.OPTION.entry(opened)));
        return lines.isEmpty()
                ? panel
                : panel.withTables(List.of(new Table(
                        "Each designed and checked like the job itself",
                        List.of("", "Option", "Adds", "Total", "Checks"),
                        lines)));
    }

    static Panel allowances(Opened opened, Price price) {
        List<Table.Line> lines = new ArrayList<>();
        for (UnitOffer offer : price.unitOffers())
            lines.add(new Table.Line(
                    "",
                    List.of(
                            offer.name(),
                            DecimalText.upTo(offer.included(), 1),
                            offer.each().text())));
        return Panel.of("Allowances", "")
                .withEntries(List.of(Ledger.ALLOWANCE.entry(opened)))
                .withTables(List.of(new Table(
                        "What may be met: how many are in the price, and what one more costs the customer",
                        List.of("For", "In the price", "One more"),
                        lines)));
    }

    static Panel bills(Opened opened, Design design) {
        Job job = design.job();
        Statement statement = Statement.of(
                design.quote().price(), job.log().changes(), job.money().billing());
        List<Table.Line> changes = new ArrayList<>();
        for (Change change : job.log().changes())
            changes.add(new Table.Line(
                    "",
                    List.of(
                            change.id(),
                            change.date().toString(),
                            change.what(),
                            change.price().signedText(),
                            change.accepted() ? "signed" : "not signed")));
        Panel panel = Panel.of("Bills and changes", "")
                .withFields(List.of(opened.fields()
                        .choice(
                                "money.billing.retainage",
                                "Kept back until the end",
                                Unit.PERCENT,
                                "money",
                                List.of(),
                                "nothing")))
                .withEntries(List.of(Ledger.CHANGE.entry(opened), Ledger.BILL.entry(opened), Ledger.PAID.entry(opened)))
                .withRows(List.of(
                        Row.of(
                                "money.contract",
                                "Contract with signed changes",
                                statement.contract().text()),
                        Row.of("money.billed", "Billed", statement.billed().text()),
                        Row.of(
                                "money.retained",
                                "Kept back",
                                statement.retained().text()),
                        Row.of("money.paid", "Paid", statement.paid().text()),
                        Row.of("money.due", "Due now", statement.due().text()),
                        Row.of(
                                "money.balance",
                                "Still to come in",
                                statement.balance().text())));
        return changes.isEmpty()
                ? panel
                : panel.withTables(List.of(
                        new Table("Changes after acceptance", List.of("", "Day", "What", "Adds", ""), changes)));
    }

    /** Notices by their last day. Days are the user's own; what the law asks is said by the law of the place. */
    static Panel notices(Opened opened, Design design) {
        List<Row> rows = new ArrayList<>();
        List<NoticeDate> dates = NoticeDate.of(
                design.job().money().billing().notices(),
                WorkSpan.of(design.quote().schedule(), design.job().log().hours()));
        for (int i = 0; i < dates.size(); i++)
            rows.add(Row.of(
                    "notice." + i, dates.get(i).notice().what(), dates.get(i).words()));
        if (!rows.isEmpty())
            rows.add(new Row(
                    "notice.law",
                    "Local law governs",
                    "",
                    "Ask whoever advises you what is asked, by when and of whom; this counts days and is no legal advice.",
                    ""));
        return Panel.of("Notices", "")
                .withEntries(List.of(Ledger.NOTICE.entry(opened)))
                .withRows(rows)
                .withStrips(Listed.strips(opened, Ledger.NOTICE, "money.billing.notices", "Notice"));
    }

    static Panel calls(Opened opened, Job job) {
        List<Table.Line> lines = new ArrayList<>();
        for (Complaint call : job.log().complaints())
            lines.add(new Table.Line(
                    "",
                    List.of(
                            call.date().toString(),
                            call.what(),
                            call.cause().words(),
                            DecimalText.upTo(call.hours(), 1),
                            call.cost().text())));
        Panel panel = Panel.of("Warranty", "").withEntries(List.of(Ledger.CALL.entry(opened)));
        return lines.isEmpty()
                ? panel
                : panel.withTables(
                        List.of(new Table("Calls", List.of("Day", "What", "Cause", "Hours", "Bought"), lines)));
    }
}
