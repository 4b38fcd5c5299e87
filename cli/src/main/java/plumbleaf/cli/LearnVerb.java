package plumbleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.job.Actual;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.labour.LearnedRate;
import plumbleaf.engine.labour.Learning;
import plumbleaf.engine.pricing.WarrantyRecord;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.jobfile.result.ResultFile;

/** What done jobs say about the hours in the price book. */
@Command(
        name = "learn",
        description = "Says what the hours of done jobs make of the rates in the price book. Changes nothing.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "A rate is called into question when at least five records put its median, nine times of ten or surer,",
            "somewhere else. Whoever keeps the book changes it there."
        })
final class LearnVerb implements Callable<Integer> {
    private static final int DIGITS = 3;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Job files with actuals; the first names the book.")
    private List<Path> files = List.of();

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        List<Actual> hours = new ArrayList<>();
        List<Job> jobs = new ArrayList<>();
        for (Path file : files) {
            Job job = JobDoor.job(file).is();
            jobs.add(job);
            hours.addAll(job.log().hours());
        }
        List<LearnedRate> rates = Learning.of(
                hours,
                Books.named(files.get(0), jobs.get(0).money().priceBook()).labour());
        answer.document(ResultFile.learned(rates));
        Columns columns = new Columns("llrrrrl");
        columns.row("task", "soil", "records", "book", "median", "between", "");
        for (LearnedRate rate : rates)
            columns.row(
                    rate.book().task(),
                    rate.book().soil(),
                    Integer.toString(rate.records()),
                    DecimalText.upTo(rate.book().hours(), DIGITS),
                    DecimalText.upTo(rate.median(), DIGITS),
                    DecimalText.upTo(rate.low(), DIGITS) + " and " + DecimalText.upTo(rate.high(), DIGITS) + " ("
                            + DecimalText.whole(rate.coverage() * 100) + "% sure)",
                    words(rate));
        answer.say(
                rates.isEmpty()
                        ? List.of("No record in these jobs says what was done in how many hours.")
                        : columns.lines(0));
        if (jobs.stream().anyMatch(job -> !job.log().complaints().isEmpty())) answer.say(calls());
        return ExitCode.FINE;
    }

    /** Each job is priced, so that what its calls came to can be held against its price. */
    private List<String> calls() {
        List<WarrantyRecord.Job> jobs = new ArrayList<>();
        for (Path file : files) {
            Designed designed = Designed.from(file);
            jobs.add(new WarrantyRecord.Job(
                    designed.design().quote().price(),
                    designed.book().crew().hourly(),
                    designed.design().job().log().complaints()));
        }
        WarrantyRecord record = WarrantyRecord.of(jobs);
        Columns columns = new Columns("lrrr");
        columns.row("cause", "calls", "hours", "came to");
        for (WarrantyRecord.OfCause cause : record.causes())
            columns.row(
                    cause.cause().words(),
                    Integer.toString(cause.calls()),
                    DecimalText.upTo(cause.hours(), 1),
                    cause.cost().text());
        List<String> lines = new ArrayList<>(List.of("", "Calls under warranty:"));
        lines.addAll(columns.lines(2));
        lines.add("They came to " + DecimalText.upTo(100 * record.share(), 2) + " % of the price of these "
                + record.jobs() + " jobs: the reserve they would have asked for.");
        return lines;
    }

    private static String words(LearnedRate rate) {
        if (rate.suggestsAnother()) return "the book is off: " + DecimalText.upTo(rate.median(), DIGITS) + "?";
        return rate.coverage() >= LearnedRate.SURE ? "holds" : "too few to say";
    }
}
