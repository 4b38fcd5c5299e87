package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import plumbleaf.jobfile.json.Json;

/** The papers of a job: the packet, each paper alone, and the drawings. */
@Command(
        name = "papers",
        description = "Writes the papers of a job: packet.pdf, each paper alone, and the drawings as SVG and DXF.",
        mixinStandardHelpOptions = true,
        footer = {
            "",
            "With must-fix findings the papers are written all the same, each page marked, and the exit code is 3."
        })
final class PapersVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Mixin
    private Issue issue = new Issue();

    @Mixin
    private HouseStyles styles = new HouseStyles();

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Designed designed = Designed.from(file, styles);
        List<String> names = issue.write(issue.files(designed, answer::progress));
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
