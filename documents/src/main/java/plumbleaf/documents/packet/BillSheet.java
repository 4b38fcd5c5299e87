package plumbleaf.documents.packet;

import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.job.Billing;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.Progress;
import plumbleaf.engine.pricing.Statement;
import plumbleaf.engine.quantity.DecimalText;

/** The bill as it stands: contract, what is installed and stored, what was billed, kept back and paid, and what is due. */
public final class BillSheet {
    private static final double SIGN_HIGH_IN = 0.35;

    private BillSheet() {}

    /** Once something was billed or measured, where the job has prices. */
    public static boolean isFor(PacketSubject subject) {
        Billing billing = subject.job().money().billing();
        boolean begun = !billing.bills().isEmpty() || !billing.measured().isEmpty();
        return begun && !subject.price().isEmpty();
    }

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Bill", subject.running()).flag(subject.flag());
        Billing billing = subject.job().money().billing();
        Price price = subject.price().get(0);
        Statement statement = Statement.of(price, subject.job().log().changes(), billing);
        paper.say("To " + subject.job().site().customer() + ", "
                + subject.job().site().address() + ". Stands as of " + subject.date() + ".");
        contract(paper, statement);
        if (!billing.measured().isEmpty()) values(paper, Progress.of(statement, billing));
        sums(paper, billing, statement);
        paper.note(
                "Kept back is " + DecimalText.upTo(billing.retainage() * 100, 1)
                        + " % of each bill, due when all is billed. Tax is in every amount. Changes count once they are signed.");
        paper.add(new Block.Blank(
                List.of("For " + subject.options().contractor().get(0), "Date", "Received by", "Date"), SIGN_HIGH_IN));
        return paper.paper();
    }

    private static void contract(Paper.Builder paper, Statement statement) {
        paper.heading("Contract");
        paper.add(money().row("Price with tax", statement.total().text())
                .row("Signed changes", statement.changes().text())
                .total("Contract", statement.contract().text())
                .table());
    }

    private static Table.Builder money() {
        return Table.with(Column.words("What"), Column.right("Amount"));
    }

    /** The schedule of values: what is built in, and what lies ready and is paid for. */
    private static void values(Paper.Builder paper, Progress progress) {
        paper.heading("Schedule of values");
        Table.Builder table = Table.with(
                Column.words("Line"),
                Column.right("In the contract"),
                Column.right("Each"),
                Column.right("Installed"),
                Column.right("Stored"),
                Column.right("Value"),
                Column.right("Earned"));
        for (Progress.Line line : progress.lines())
            table.row(
                    line.of().what(),
                    count(line.of().quantity()) + " " + line.of().unit(),
                    line.of().each().text(),
                    count(line.of().installed()),
                    count(line.of().stored()),
                    line.value().text(),
                    line.installed().plus(line.stored()).text());
        table.total(
                "All lines",
                "",
                "",
                progress.installed().text(),
                progress.stored().text(),
                progress.values().text(),
                progress.earned().text());
        paper.add(table.table());
        if (!progress.apart().equals(Money.ZERO))
            paper.say("Of the contract " + progress.apart().text() + " stands in no line.");
    }

    private static String count(double quantity) {
        return DecimalText.upTo(quantity, 2);
    }

    private static void sums(Paper.Builder paper, Billing billing, Statement statement) {
        paper.heading("Billed and paid");
        Table.Builder table = money();
        for (Billing.Bill bill : billing.bills())
            table.row(
                    "Billed " + bill.date() + ", " + bill.what(), bill.amount().text());
        table.total("Billed", statement.billed().text());
        if (!statement.retained().isZero())
            table.row("Kept back until the end", statement.retained().text());
        for (Billing.Paid paid : billing.paid())
            table.row("Paid " + paid.date() + ", " + paid.how(), paid.amount().text());
        table.total("Paid", statement.paid().text());
        table.total("Due now", statement.due().text());
        table.row("Not billed yet", statement.unbilled().text());
        table.row("Still to come in", statement.balance().text());
        paper.add(table.table());
    }
}
