package plumbleaf.launcher;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import plumbleaf.jobfile.json.Json;
import plumbleaf.web.archive.Backup;
import plumbleaf.web.store.Database;

/** Everything as it stands, in one file. */
@Command(
        name = "backup",
        description = "Writes everything in the store to one file, while people work.",
        mixinStandardHelpOptions = true)
final class BackupVerb implements Callable<Integer> {
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
        return told.about("backup", () -> {
            Told.freeToWrite(out, over);
            told.thereIs(store);
            try (Database database = Database.open(store.place())) {
                Backup.Content content = Backup.write(database, out, Clock.systemUTC());
                told.say(content.jobs() + (content.jobs() == 1 ? " job" : " jobs") + " in " + out
                        + ", read again and whole.");
                told.document(Json.object()
                        .put("file", out.toString())
                        .put("schema", content.schema())
                        .put("jobs", Json.count(content.jobs())));
            }
        });
    }
}
