package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import plumbleaf.documents.PaperFile;
import plumbleaf.jobfile.json.Json;

/** The drawings of a job alone. */
@Command(
        name = "draw",
        description = "Writes the drawings of a job as SVG and DXF: site plan, unrolled profile, each gate.",
        mixinStandardHelpOptions = true)
final class DrawVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Mixin
    private Issue issue = new Issue();

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Designed designed = Designed.from(file);
        List<PaperFile> drawings = issue.files(designed, answer::progress).stream()
                .filter(paper -> !paper.name().endsWith(".pdf"))
                .toList();
        List<String> names = issue.write(drawings);
        answer.document(Json.object()
                .put("out", issue.out().toString())
                .put("files", Json.texts(names))
                .put("verdict", designed.design().verdict().key())
                .build());
        answer.say("Wrote to " + issue.out() + ":");
        for (String name : names) answer.say("  " + name);
        designed.warn(answer);
        return designed.exitCode();
    }
}
