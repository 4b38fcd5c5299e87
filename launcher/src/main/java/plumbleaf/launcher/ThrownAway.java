package plumbleaf.launcher;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import plumbleaf.web.Workspace;

/** A folder that is deleted when the program ends, after the workspace has let go of it. */
final class ThrownAway {
    private ThrownAway() {}

    static void atTheEnd(Workspace.Running workspace, Path folder) {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            workspace.stop();
            delete(folder);
        }));
    }

    private static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path path : deepestFirst) Files.deleteIfExists(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
