package plumbleaf.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import plumbleaf.cli.Plumbleaf;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobStore;

/** One command each: backup, restore, export, import; what is refused changes nothing. */
@Tag("slow")
class StoreVerbsTest {
    @TempDir
    Path folder = Path.of("");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void everythingGoesToOneFileAndComesBack() {
        String store = filled("jobs.db");
        String file = folder.resolve("yard.backup").toString();
        assertThat(run("backup", "--store", store, "--out", file)).isZero();
        assertThat(out.toString()).isEqualTo("1 job in " + file + ", read again and whole.\n");
        String other = folder.resolve("other.db").toString();
        assertThat(run("restore", file, "--store", other, "--json")).isZero();
        assertThat(out.toString()).contains("\"jobs\": 1");
        assertThat(titles(other)).isEqualTo("Kiln yard");
        assertThat(run("restore", file, "--store", other)).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo(file + ": there are jobs or people in the store already; add --over to replace them;"
                        + " nothing was changed\n");
    }

    @Test
    void whatIsExportedIsTakenIn() {
        String store = filled("jobs.db");
        String file = folder.resolve("yard.zip").toString();
        assertThat(run("export", "--store", store, "--out", file)).isZero();
        String other = folder.resolve("other.db").toString();
        assertThat(run("import", file, "--store", other)).isZero();
        assertThat(out.toString()).isEqualTo("1 job taken in, 0 known before.\n");
        assertThat(titles(other)).isEqualTo("Kiln yard");
    }

    @Test
    void aHalfFileAndAMissingStoreAreRefused() throws IOException {
        String store = filled("jobs.db");
        Path file = folder.resolve("yard.backup");
        assertThat(run("backup", "--store", store, "--out", file.toString())).isZero();
        assertThat(run("backup", "--store", store, "--out", file.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("is there already; name another, or add --over");
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, whole.length / 2));
        String other = folder.resolve("other.db").toString();
        assertThat(run("restore", file.toString(), "--store", other)).isEqualTo(2);
        assertThat(err.toString()).contains("this file is not whole, or not what it should be; nothing was changed");
        assertThat(folder.resolve("other.db")).doesNotExist();
        assertThat(run("backup", "--store", other, "--out", folder.resolve("x").toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("there is no store at " + other);
        assertThat(folder.resolve("x")).doesNotExist();
        assertThat(folder.resolve("other.db")).doesNotExist();
    }

    @Test
    void whatIsNoStoreIsSaidInOneLine() throws IOException {
        String text = Files.writeString(folder.resolve("notes.txt"), "no store").toString();
        assertThat(run("serve", "--people", "--address", "127.0.0.1", "--port", "0", "--store", text))
                .isEqualTo(2);
        assertThat(err.toString())
                .startsWith("plumbleaf serve: the store cannot be opened: ")
                .endsWith("; check what --store says\n")
                .hasLineCount(1);
        assertThat(run("backup", "--store", text, "--out", folder.resolve("x").toString()))
                .isEqualTo(2);
        assertThat(err.toString())
                .startsWith("backup: the store cannot be opened: ")
                .hasLineCount(1);
        assertThat(Files.readString(Path.of(text))).isEqualTo("no store");
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = String.valueOf(taken.getLocalPort());
            assertThat(run("serve", "--port", port, "--store", filled("jobs.db")))
                    .isEqualTo(2);
            assertThat(err.toString())
                    .isEqualTo("plumbleaf serve: cannot listen on port " + port
                            + " of 127.0.0.1; name another with --port\n");
        }
    }

    private String filled(String name) {
        String place = folder.resolve(name).toString();
        try (Database database = Database.open(place)) {
            new JobStore(database, Clock.systemUTC()).create("Kiln yard", "{}", "Wen");
        }
        return place;
    }

    private static String titles(String place) {
        try (Database database = Database.open(place)) {
            return String.join(
                    ", ",
                    new JobStore(database, Clock.systemUTC())
                            .list().stream().map(line -> line.title()).toList());
        }
    }

    private int run(String... words) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        CommandLine line = Plumbleaf.commandLine();
        line.addSubcommand(new ServeVerb());
        line.addSubcommand(new BackupVerb());
        line.addSubcommand(new RestoreVerb());
        line.addSubcommand(new ExportVerb());
        line.addSubcommand(new ImportVerb());
        line.setOut(new PrintWriter(out));
        line.setErr(new PrintWriter(err));
        return line.execute(words);
    }
}
