package plumbleaf.launcher;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.jobfile.json.Json;
import plumbleaf.web.archive.Backup;

/** A backup put back. */
@Command(
        name = "restore",
        description = "Puts everything back that a backup holds: proved first, then whole or not at all.",
        mixinStandardHelpOptions = true)
final class RestoreVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The backup.")
    private Path file = Path.of("");

    @Option(names = "--over", description = "Replace what is in the store.")
    private boolean over;

    @Mixin
    private StoreOption store = new StoreOption();

    @Mixin
    private Told told = new Told();

    @Override
    public Integer call() {
        return told.about(file.toString(), () -> {
            Backup.Content content = Backup.restore(file, store.place(), over);
            told.say(content.jobs() + (content.jobs() == 1 ? " job" : " jobs") + " restored to " + store.shown()
                    + " and counted again.");
            told.document(Json.object()
                    .put("store", store.shown())
                    .put("schema", content.schema())
                    .put("jobs", Json.count(content.jobs())));
        });
    }
}
