package plumbleaf.launcher;

import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Which store a verb works on. */
final class StoreOption {
    @Option(
            names = "--store",
            description = "Where jobs are kept: a file, or jdbc:postgresql://... Default: what PLUMBLEAF_STORE in the"
                    + " environment says, else a file in your data folder.")
    private String place = usual();

    String place() {
        return place;
    }

    /** Whether there is something to read; a database server answers for itself. */
    boolean isThere() {
        return place.startsWith("jdbc:") || Files.isRegularFile(Path.of(place));
    }

    /** Without the user and password that a database address may carry. */
    String shown() {
        return place.startsWith("jdbc:") ? place.replaceAll("//[^/@]*@", "//").replaceAll("\\?.*", "") : place;
    }

    /** From the environment, so that a database's password need not stand on a command line that others can list. */
    private static String usual() {
        String said = System.getenv("PLUMBLEAF_STORE");
        return said != null && !said.isBlank() ? said : dataFolder().toString();
    }

    private static Path dataFolder() {
        String data = System.getenv("XDG_DATA_HOME");
        String local = System.getenv("LOCALAPPDATA");
        Path folder = data != null && !data.isBlank()
                ? Path.of(data)
                : local != null && !local.isBlank()
                        ? Path.of(local)
                        : Path.of(System.getProperty("user.home"), ".local", "share");
        return folder.resolve("plumbleaf").resolve("jobs.db");
    }
}
