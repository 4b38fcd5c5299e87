package plumbleaf.launcher;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.springframework.boot.logging.LogLevel;
import org.springframework.boot.logging.LoggingSystem;
import org.springframework.dao.DataAccessException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.web.archive.NotTaken;
import plumbleaf.web.store.CannotOpen;

/** How the verbs of the store answer: people's lines, or one JSON document; exit 2 with the reason where nothing was done. */
final class Told {
    private static final int FINE = 0;
    private static final int BAD_INPUT = 2;

    @Option(names = "--json", description = "Answer with one JSON document; text for people goes to stderr.")
    private boolean json;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    /** Does the work; what cannot be taken is told about this file or verb. */
    int about(String file, Runnable work) {
        // What goes wrong comes as an exception; the libraries' own lines would mix with the answer.
        LoggingSystem.get(Told.class.getClassLoader()).setLogLevel(LoggingSystem.ROOT_LOGGER_NAME, LogLevel.OFF);
        try {
            work.run();
            return FINE;
        } catch (NotTaken refused) {
            return refuse(InputError.ofFile(file, String.valueOf(refused.getMessage()), "nothing was changed"));
        } catch (CannotOpen closed) {
            return refuse(InputError.ofFile(
                    file, "the store cannot be opened: " + closed.getMessage(), "check what --store says"));
        } catch (DataAccessException silent) {
            return refuse(InputError.ofFile(
                    file, "the store stopped answering in the middle", "nothing was changed; do it again"));
        }
    }

    void say(String line) {
        PrintWriter writer =
                json ? spec.commandLine().getErr() : spec.commandLine().getOut();
        writer.print(line + "\n");
        writer.flush();
    }

    void document(Json.Members members) {
        if (!json) return;
        spec.commandLine().getOut().print(JsonWriter.write(members.build()));
        spec.commandLine().getOut().flush();
    }

    void thereIs(StoreOption store) {
        if (!store.isThere()) throw new NotTaken("there is no store at " + store.shown());
    }

    static void freeToWrite(Path out, boolean over) {
        if (Files.isDirectory(out)) throw new NotTaken(out + " is a folder; name a file in it");
        if (!over && Files.exists(out)) throw new NotTaken(out + " is there already; name another, or add --over");
        Path folder = out.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) throw new NotTaken("there is no folder for " + out);
    }

    private int refuse(InputError error) {
        PrintWriter err = spec.commandLine().getErr();
        err.print(error.text() + "\n");
        err.flush();
        if (json)
            spec.commandLine()
                    .getOut()
                    .print(JsonWriter.write(Json.object()
                            .put("errors", List.of(error), InputError::json)
                            .build()));
        spec.commandLine().getOut().flush();
        return BAD_INPUT;
    }
}
