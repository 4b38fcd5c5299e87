package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.jobfile.stock.Yard;
import plumbleaf.jobfile.stock.YardFile;
import plumbleaf.jobfile.stock.YardRow;

/** What lies in the yard; a job takes its stock out of it, leaves its offcuts there, or gives everything back. */
@Command(
        name = "yard",
        description = "Shows what lies in the yard, lets a job take its stock, or gives it back.",
        mixinStandardHelpOptions = true)
final class YardVerb implements Callable<Integer> {
    @Parameters(paramLabel = "YARD", description = "The yard's file.")
    private Path file = Path.of("");

    @Option(names = "--new", description = "Begin an empty yard in a file that is not there.")
    private boolean begin;

    @Option(
            names = "--take",
            paramLabel = "JOB",
            description = "Take what this job uses out, and lay its offcuts in. Writes the yard's file.")
    private String take = "";

    @Option(
            names = "--return",
            paramLabel = "JOB",
            description = "Give back what this job took, and take out the offcuts it left. Writes the yard's file.")
    private String back = "";

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        if (begin) {
            Written.text(file, YardFile.write(Yard.empty()), false);
            answer.say("Wrote " + file + ", an empty yard.");
            return ExitCode.FINE;
        }
        if (!take.isEmpty() && !back.isEmpty())
            throw BadInput.of("plumbleaf yard", "--take and --return do not go together", "do one, then the other");
        YardDoor.Counted counted = YardDoor.counted(file);
        Yard yard = counted.yard();
        if (!take.isEmpty()) {
            yard = taken(counted);
            Written.text(file, YardFile.write(yard), true);
        }
        if (!back.isEmpty()) {
            yard = returned(counted);
            Written.text(file, YardFile.write(yard), true);
        }
        answer.document(Json.object().put("rows", yard.rows(), YardVerb::json).build());
        Columns columns = new Columns("lrll");
        for (YardRow row : yard.rows()) {
            if (row.count() == 0) continue;
            columns.row(row.mark(), Integer.toString(row.count()), what(row), where(row));
        }
        answer.say(columns.lines(0));
        if (columns.isEmpty()) answer.say("Nothing lies in the yard.");
        return ExitCode.FINE;
    }

    private Yard taken(YardDoor.Counted counted) {
        Path jobFile = Path.of(take);
        Designed designed = Designed.from(jobFile, counted);
        Taker job = counted.taker(jobFile, designed.design().job().title());
        if (counted.yard().knows(job))
            throw BadInput.of(
                    file.toString(),
                    name(job) + " has taken its stock already",
                    "give it back first: --return " + take);
        return counted.yard().after(job, designed.design().quote().takeoff());
    }

    private Yard returned(YardDoor.Counted counted) {
        Path jobFile = Path.of(back);
        Taker job = counted.taker(jobFile, JobDoor.job(jobFile).is().title());
        Yard yard = counted.yard();
        if (!yard.knows(job))
            throw BadInput.of(
                    file.toString(),
                    name(job) + " has taken nothing here",
                    "look at the column job_mark: it names the file that took, as seen from the yard's");
        List<String> used = yard.usedSince(job);
        if (!used.isEmpty())
            throw BadInput.of(
                    file.toString(),
                    "offcuts that " + name(job) + " left have been used since: " + String.join(", ", used),
                    "give those jobs' stock back first");
        return yard.givenBack(job);
    }

    /** Title and file: two jobs may have one title. */
    private static String name(Taker job) {
        return job.mark().isEmpty() ? job.title() : job.title() + " (" + job.mark() + ")";
    }

    private static String what(YardRow row) {
        return switch (row.kind()) {
            case BAR ->
                row.item() + ", " + LengthText.feetAndInches(row.length().inches());
            case OFFCUT ->
                row.item() + ", offcut " + LengthText.feetAndInches(row.length().inches());
            case GOODS ->
                row.item() + ", " + DecimalText.upTo(row.contents(), 2) + " "
                        + row.of().key() + " each";
        };
    }

    private static String where(YardRow row) {
        if (!row.isHere()) return "out with " + name(row.job());
        return row.job().isNobody() ? "" : "left by " + name(row.job());
    }

    private static Node json(YardRow row) {
        return Json.object()
                .put("mark", row.mark())
                .put("item", row.item())
                .put("kind", row.kind().key())
                .put("lengthIn", row.length().inches())
                .put("count", Json.count(row.count()))
                .put("contents", row.contents())
                .put("of", row.of().key())
                .put("state", row.state().key())
                .put("job", row.job().title())
                .put("jobMark", row.job().mark())
                .build();
    }
}
