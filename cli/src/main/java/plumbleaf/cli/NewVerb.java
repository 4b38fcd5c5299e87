package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;

/** Writes a small job file to start from: one run, one gate, three shots, marked as a draft. */
@Command(
        name = "new",
        description = "Writes a small job file to start from: one run, one gate, a few shots.",
        mixinStandardHelpOptions = true)
final class NewVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file to write.")
    private Path file = Path.of("");

    @Option(names = "--title", paramLabel = "TEXT", description = "Title of the job. Default: ${DEFAULT-VALUE}.")
    private String title = "New fence";

    @Option(names = "--customer", paramLabel = "NAME", description = "Who it is for.")
    private String customer = "";

    @Option(names = "--metric", description = "Show lengths in millimeters.")
    private boolean metric;

    @Option(names = "--over", description = "Write over a file that is there.")
    private boolean over;

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Written.text(file, JsonWriter.write(starter()), over);
        answer.document(Json.object().put("wrote", file.toString()).build());
        answer.say("Wrote " + file + ". Open it, put in what you measured, then: plumbleaf check " + file);
        return ExitCode.FINE;
    }

    private Node starter() {
        Json.Members site = Json.object();
        if (!customer.isBlank()) site.put("customer", customer);
        Json.Members job =
                Json.object().put("format", "plumbleaf-job").put("version", 1).put("title", title);
        job.put("display", metric ? "metric" : "us").put("draft", true);
        if (!site.isEmpty()) job.put("site", site);
        return job.put(
                        "ground",
                        Json.object()
                                .put(
                                        "shots",
                                        Json.list(
                                                List.of(
                                                        shot("S1", "0'", "0\""),
                                                        shot("S2", "12'", "-6\""),
                                                        shot("S3", "24'", "-14\"")),
                                                is -> is)))
                .put("runs", Json.list(List.of(run()), is -> is))
                .put("gates", Json.list(List.of(gate()), is -> is))
                .build();
    }

    private static Node shot(String id, String station, String elevation) {
        return Json.object()
                .put("id", id)
                .put("run", "R1")
                .put("station", station)
                .put("elevation", elevation)
                .build();
    }

    private static Node run() {
        Node leg = Json.object().put("length", "24'").put("bearing", "90 deg").build();
        return Json.object()
                .put("id", "R1")
                .put("legs", Json.list(List.of(leg), is -> is))
                .put("style", "wood-side-by-side")
                .put("infill", "6'")
                .build();
    }

    private static Node gate() {
        return Json.object()
                .put("id", "G1")
                .put("kind", "swing")
                .put("run", "R1")
                .put("station", "8'")
                .put("opening", "4'")
                .build();
    }
}
