package plumbleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.catalogue.OwnParts;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;

/** Puts makers' parts into a job: a table of hinges, latches, drop rods, or tubes and posts. */
@Command(
        name = "parts",
        description = "Reads tables of your own parts (hinges, latches, rods, tubes) and puts them into a job.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "A heading tells the kind: pin_offset_in a hinge, holds_lb a latch, yield_psi a rod, wall_in a tube.",
            "A rating may be \"unknown\": then it is never a pass."
        })
final class PartsVerb implements Callable<Integer> {
    @Parameters(paramLabel = "TABLE", arity = "1..*", description = "Comma-separated tables, headings first.")
    private List<Path> tables = new ArrayList<>();

    @Option(names = "--into", paramLabel = "JOB", description = "A job file to put them into; needs --out.")
    private String into = "";

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write the job with its parts.")
    private String out = "";

    @Option(names = "--over", description = "Write over a file that is there.")
    private boolean over;

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        if (into.isEmpty() != out.isEmpty())
            throw BadInput.of("plumbleaf parts", "--into and --out go together", "give both, or neither to look only");
        OwnParts parts = OwnPartsDoor.read(tables);
        if (!into.isEmpty()) write(parts, Path.of(into), Path.of(out));
        answer.document(Json.object()
                .put("parts", Json.list(parts.ids(), Json::text))
                .put("files", Json.list(tables, table -> Json.text(table.toString())))
                .build());
        for (String id : parts.ids()) answer.say(id);
        if (!out.isEmpty()) answer.say("Wrote " + out + ".");
        return ExitCode.FINE;
    }

    private void write(OwnParts parts, Path job, Path to) {
        Node with = OwnPartsDoor.into(JobDoor.tree(job), parts);
        JobFile.read(to.toString(), with, JobDoor.catalogue(job)).match(good -> true, bad -> {
            throw new BadInput(bad.all());
        });
        Written.text(to, JsonWriter.write(with), over);
    }
}
