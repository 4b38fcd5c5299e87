package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.Assumption;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Leg;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.MetricWords;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.json.Json;

/** Reads a job file and says what it holds, what was assumed, and what a draft still lacks. */
@Command(
        name = "check",
        description = "Reads a job file and names everything that is wrong with it, and everything that is assumed.",
        mixinStandardHelpOptions = true)
final class CheckVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Mixin
    private HouseStyles styles = new HouseStyles();

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        JobReading.Good reading = JobDoor.job(file, styles.catalogueOf(file));
        Job job = reading.is();
        answer.document(Json.object()
                .put("file", file.toString())
                .put("title", job.title())
                .put("draft", job.draft())
                .put("runs", job.runs().size())
                .put("gates", job.gates().size())
                .put("shots", job.ground().shots().size())
                .put(
                        "assumed",
                        job.assumed(),
                        assumed -> Json.object()
                                .put("field", assumed.field())
                                .put("value", assumed.value())
                                .put("why", assumed.why())
                                .build())
                .put("missing", reading.gaps(), gap -> Json.text(gap.part()))
                .put("errors", Json.texts(List.of()))
                .build());
        answer.say(file + " is a good job file: " + job.title());
        answer.say("  " + contents(job));
        for (Finding gap : reading.gaps()) answer.say("  " + gap.message());
        Columns assumed = new Columns("lll");
        MetricWords metric = MetricWords.keeping(List.of());
        for (Assumption one : job.assumed())
            assumed.row(
                    one.field(),
                    job.display().said(one.value(), metric),
                    job.display().said(one.why(), metric));
        if (!assumed.isEmpty()) answer.say("Not said, so assumed:");
        answer.say(assumed.lines(2));
        return ExitCode.FINE;
    }

    private static String contents(Job job) {
        Length fence = Length.ZERO;
        for (Run run : job.runs()) {
            for (Leg leg : run.legs()) fence = fence.plus(leg.length());
        }
        return count(job.runs().size(), "run") + " of " + job.display().length(fence) + " in all, "
                + count(job.gates().size(), "gate") + ", "
                + count(job.ground().shots().size(), "shot");
    }

    private static String count(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
