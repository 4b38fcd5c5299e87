package plumbleaf.launcher;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import plumbleaf.jobfile.json.Json;
import plumbleaf.web.archive.Archive;
import plumbleaf.web.store.Database;

/** What export wrote, taken in. */
@Command(
        name = "import",
        description = "Takes in what export wrote: whole or not at all. A job that is here already must be the same.",
        mixinStandardHelpOptions = true)
final class ImportVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The archive.")
    private Path file = Path.of("");

    @Mixin
    private StoreOption store = new StoreOption();

    @Mixin
    private Told told = new Told();

    @Override
    public Integer call() {
        return told.about(file.toString(), () -> {
            try (Database database = Database.open(store.place())) {
                Archive.Content content = Archive.read(file, database);
                told.say(content.jobs() + (content.jobs() == 1 ? " job" : " jobs") + " taken in, " + content.known()
                        + " known before.");
                told.document(Json.object().put("jobs", content.jobs()).put("known", content.known()));
            }
        });
    }
}
