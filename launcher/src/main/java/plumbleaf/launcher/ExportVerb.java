package plumbleaf.launcher;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbleaf.jobfile.json.Json;
import plumbleaf.web.archive.Archive;
import plumbleaf.web.store.Database;

/** Everything for any program to read. */
@Command(
        name = "export",
        description = "Writes every job with its history and files, and the people, as JSON and files in one zip.",
        mixinStandardHelpOptions = true)
final class ExportVerb implements Callable<Integer> {
    @Option(names = "--out", required = true, paramLabel = "FILE", description = "File to write.")
    private Path out = Path.of("");

    @Option(names = "--over", description = "Write over a file that is there already.")
    private boolean over;

    @Mixin
    private StoreOption store = new StoreOption();

    @Mixin
    private Told told = new Told();

    @Override
    public Integer call() {
        return told.about("export", () -> {
            Told.freeToWrite(out, over);
            told.thereIs(store);
            try (Database database = Database.open(store.place())) {
                Archive.Content content = Archive.write(database, out);
                told.say(content.jobs() + (content.jobs() == 1 ? " job" : " jobs") + " in " + out
                        + ". No password, key or link is in it.");
                told.document(Json.object().put("file", out.toString()).put("jobs", content.jobs()));
            }
        });
    }
}
