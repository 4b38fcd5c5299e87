package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.stock.ItemNames;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.jobfile.stock.Yard;
import plumbleaf.jobfile.stock.YardFile;
import plumbleaf.jobfile.stock.YardRow;

/** What lies in the yard; what a job ordered comes in, it takes its stock out, leaves its offcuts there, or gives everything back. */
@Command(
        name = "yard",
        description =
                "Shows what lies in the yard, counts in what came for a job, lets it take its stock, or gives it back.",
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

    @Option(
            names = "--receive",
            paramLabel = "JOB",
            description = "Count in what came of this job's order, kept for it: all that has not come yet, or what"
                    + " --came says. Writes the yard's file and says what is short.")
    private String receive = "";

    @Option(
            names = "--came",
            paramLabel = "FILE",
            description = "What came of one delivery: the table of plumbleaf order --receiving, its last column written"
                    + " in.")
    private String came = "";

    @Option(
            names = "--not-received",
            paramLabel = "JOB",
            description = "Take out again what came for this job and still waits for it. Writes the yard's file.")
    private String notReceived = "";

    @Option(
            names = "--book",
            paramLabel = "BOOK",
            description =
                    "The price book whose words name things; a folder beside the yard's file, or ${DEFAULT-VALUE}.",
            defaultValue = "example-2027")
    private String book = "";

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        if (begin) {
            Written.text(file, YardFile.write(Yard.empty()), false);
            answer.say("Wrote " + file + ", an empty yard.");
            return ExitCode.FINE;
        }
        long asked = Stream.of(take, back, receive, notReceived)
                .filter(job -> !job.isEmpty())
                .count();
        if (asked > 1)
            throw BadInput.of(
                    "plumbleaf yard",
                    "--take, --return, --receive and --not-received do not go together",
                    "do one, then the other");
        if (!came.isEmpty() && receive.isEmpty())
            throw BadInput.of("plumbleaf yard", "--came says what came of which job?", "add --receive JOB");
        YardDoor.Counted counted = YardDoor.counted(file);
        Yard yard = counted.yard();
        List<String> shorts = List.of();
        if (!take.isEmpty()) yard = taken(counted);
        if (!back.isEmpty()) yard = returned(counted);
        if (!notReceived.isEmpty()) yard = notReceived(counted);
        if (!receive.isEmpty()) {
            Tailgate gate = Tailgate.of(counted, Path.of(receive), came);
            yard = gate.yard();
            shorts = gate.shorts();
        }
        if (asked > 0) Written.text(file, YardFile.write(yard), true);
        ItemNames names = new ItemNames(Books.named(file, book).materials());
        answer.document(Json.object()
                .put("rows", yard.rows(), row -> json(row, names))
                .put("short", Json.list(shorts, Json::text))
                .build());
        Columns columns = new Columns("lrlll");
        for (YardRow row : yard.rows()) {
            if (row.count() == 0) continue;
            columns.row(row.mark(), Integer.toString(row.count()), names.of(row), ItemNames.size(row), where(row));
        }
        answer.say(columns.lines(0));
        if (columns.isEmpty()) answer.say("Nothing lies in the yard.");
        if (!receive.isEmpty() && shorts.isEmpty()) answer.say("Everything that was ordered is here.");
        if (!shorts.isEmpty()) answer.say("Short:");
        for (String line : shorts) answer.say("  " + line);
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

    private Yard notReceived(YardDoor.Counted counted) {
        Path jobFile = Path.of(notReceived);
        Taker job = counted.taker(jobFile, JobDoor.job(jobFile).is().title());
        Yard yard = counted.yard();
        if (yard.keptFor(job).isEmpty())
            throw BadInput.of(
                    file.toString(), "nothing that came for " + name(job) + " waits here", "give its stock back first");
        return yard.nothingReceived(job);
    }

    /** Title and file: two jobs may have one title. */
    private static String name(Taker job) {
        return job.mark().isEmpty() ? job.title() : job.title() + " (" + job.mark() + ")";
    }

    private static String where(YardRow row) {
        if (row.isOut()) return "out with " + name(row.job());
        if (row.isKept())
            return "kept for " + name(row.job()) + (row.neededBy().isEmpty() ? "" : ", needed by " + row.neededBy());
        return row.job().isNobody() ? "" : "left by " + name(row.job());
    }

    private static Node json(YardRow row, ItemNames names) {
        return Json.object()
                .put("mark", row.mark())
                .put("item", row.item())
                .put("name", names.of(row))
                .put("kind", row.kind().key())
                .put("lengthIn", row.length().inches())
                .put("count", Json.count(row.count()))
                .put("contents", row.contents())
                .put("of", row.of().key())
                .put("state", row.state().key())
                .put("job", row.job().title())
                .put("jobMark", row.job().mark())
                .put("neededBy", row.neededBy())
                .build();
    }
}
