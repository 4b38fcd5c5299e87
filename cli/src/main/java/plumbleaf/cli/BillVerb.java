package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.job.Billing;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.Progress;
import plumbleaf.engine.pricing.Statement;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.schedule.NoticeDate;
import plumbleaf.engine.schedule.WorkSpan;
import plumbleaf.jobfile.result.ResultFile;

/** What the customer owes. */
@Command(
        name = "bill",
        description = "Says what a job comes to, what was billed, kept back and paid, and what is due.",
        mixinStandardHelpOptions = true)
final class BillVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Designed designed = Designed.from(file);
        Job job = designed.design().job();
        Statement statement = Statement.of(
                designed.design().quote().price(),
                job.log().changes(),
                job.money().billing());
        List<NoticeDate> notices = NoticeDate.of(
                job.money().billing().notices(),
                WorkSpan.of(designed.design().quote().schedule(), job.log().hours()));
        Billing billing = job.money().billing();
        Progress progress = Progress.of(statement, billing);
        answer.document(ResultFile.statement(job.title(), statement, progress, billing, notices));
        answer.say(lines(job, statement));
        if (!billing.measured().isEmpty()) {
            answer.say("");
            answer.say(lines(progress));
        }
        if (!billing.submittals().isEmpty()) answer.say("");
        for (Billing.Submittal each : billing.submittals())
            answer.say("Submittal " + each.what() + ": " + each.words());
        if (!notices.isEmpty()) answer.say("");
        for (NoticeDate notice : notices) answer.say(notice.notice().what() + ": " + notice.words());
        if (!notices.isEmpty()) answer.say("Days as you were told them; local law governs. No legal advice.");
        return ExitCode.FINE;
    }

    private static List<String> lines(Job job, Statement statement) {
        Columns columns = new Columns("lr");
        columns.row("Price with tax", statement.total().text());
        columns.row("Signed changes", statement.changes().text());
        columns.row("Contract", statement.contract().text());
        for (Billing.Bill bill : job.money().billing().bills())
            columns.row(
                    "  billed " + bill.date() + ", " + bill.what(),
                    bill.amount().text());
        columns.row("Billed", statement.billed().text());
        columns.row("Kept back until the end", statement.retained().text());
        for (Billing.Paid paid : job.money().billing().paid())
            columns.row(
                    "  paid " + paid.date() + ", " + paid.how(), paid.amount().text());
        columns.row("Paid", statement.paid().text());
        columns.row("Due now", statement.due().text());
        columns.row("Not billed yet", statement.unbilled().text());
        columns.row("Still to come in", statement.balance().text());
        return columns.lines(0);
    }

    /** What the work is worth as it stands. */
    private static List<String> lines(Progress progress) {
        Columns columns = new Columns("lrrr");
        columns.row("Schedule of values", "value", "installed", "stored");
        for (Progress.Line line : progress.lines())
            columns.row(
                    "  " + line.of().what() + ", " + DecimalText.upTo(line.of().installed(), 2) + " in and "
                            + DecimalText.upTo(line.of().stored(), 2) + " stored of "
                            + DecimalText.upTo(line.of().quantity(), 2) + " "
                            + line.of().unit(),
                    line.value().text(),
                    line.installed().text(),
                    line.stored().text());
        columns.row(
                "All lines",
                progress.values().text(),
                progress.installed().text(),
                progress.stored().text());
        columns.row("Of the contract, in no line", progress.apart().text(), "", "");
        columns.row("Installed and stored", progress.earned().text(), "", "");
        columns.row("Kept back of that", progress.retained().text(), "", "");
        columns.row("To bill next", progress.next().text(), "", "");
        return columns.lines(0);
    }
}
