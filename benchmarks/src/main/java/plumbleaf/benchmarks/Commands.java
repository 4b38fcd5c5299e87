package plumbleaf.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Verbs of the command line as cold processes, started as a user starts them. */
final class Commands {
    private static final int MOST_SECONDS = 120;
    private static final String JOB = "examples/nursery-lane-settled.json";
    private static final double VERB_GOAL_MS = 500;
    private static final double PACKET_GOAL_MS = 3000;
    /** The heap that every verb has to do with. */
    private static final String HEAP = "-Xmx96m";

    private Commands() {}

    static List<String> rows(int runs) {
        List<String> rows = new ArrayList<>(List.of(Figure.heading()));
        for (String verb : List.of("version", "check", "design", "choose", "cut", "price"))
            rows.add(timed(verb, verb.equals("version") ? List.of(verb) : List.of(verb, JOB), runs)
                    .upTo(VERB_GOAL_MS)
                    .row());
        Path out = fresh();
        try {
            rows.add(timed("papers, the full packet", List.of("papers", JOB, "--out", out.toString()), runs)
                    .upTo(PACKET_GOAL_MS)
                    .row());
        } finally {
            delete(out);
        }
        rows.add("\nEvery verb ran in a heap of at most 96 MB, which is the goal.");
        return rows;
    }

    private static Figure timed(String name, List<String> words, int runs) {
        List<String> command = new ArrayList<>(List.of("./plumbleaf"));
        command.addAll(words);
        List<Double> millis = new ArrayList<>();
        // The first run fills the disk cache and is not counted.
        for (int run = 0; run <= runs; run++) {
            Program.Run done = Program.with("JAVA_TOOL_OPTIONS", HEAP, command, MOST_SECONDS)
                    .orElseThrow(() -> new IllegalStateException(String.join(" ", command) + " did not end"));
            if (done.exit() != 0)
                throw new IllegalStateException(
                        String.join(" ", command) + " ended with " + done.exit() + ": " + done.output());
            if (run > 0) millis.add(done.millis());
        }
        return Figure.of(name, "ms", millis);
    }

    private static Path fresh() {
        try {
            return Files.createTempDirectory("packet");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) Files.delete(each);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
