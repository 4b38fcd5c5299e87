package plumbleaf.benchmarks;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** Another process, from its start to its end. */
final class Program {
    private Program() {}

    /**
     * @param millis from start to end
     * @param output all it said
     * @param exit its exit status
     */
    record Run(double millis, String output, int exit) {}

    /** Runs it and waits; empty when it took longer than it may. */
    static Optional<Run> run(List<String> command, int mostSeconds) {
        return run(command, Optional.empty(), Map.of(), mostSeconds);
    }

    /** Runs it with words on its standard input. */
    static Optional<Run> fed(List<String> command, String words, int mostSeconds) {
        return run(command, Optional.of(words), Map.of(), mostSeconds);
    }

    /** Runs it with one more variable in its environment. */
    static Optional<Run> with(String variable, String value, List<String> command, int mostSeconds) {
        return run(command, Optional.empty(), Map.of(variable, value), mostSeconds);
    }

    private static Optional<Run> run(
            List<String> command, Optional<String> words, Map<String, String> variables, int mostSeconds) {
        try {
            Path said = Files.createTempFile("measured", ".txt");
            try {
                long start = System.nanoTime();
                ProcessBuilder builder =
                        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile());
                builder.environment().putAll(variables);
                Process process = builder.start();
                try (OutputStream in = process.getOutputStream()) {
                    in.write(words.orElse("").getBytes(StandardCharsets.UTF_8));
                }
                boolean ended = process.waitFor(mostSeconds, TimeUnit.SECONDS);
                double millis = (System.nanoTime() - start) / 1e6;
                if (!ended) {
                    process.destroyForcibly().waitFor();
                    return Optional.empty();
                }
                return Optional.of(
                        new Run(millis, Files.readString(said, StandardCharsets.UTF_8), process.exitValue()));
            } finally {
                Files.deleteIfExists(said);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot run " + command.get(0), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Stopped while waiting for " + command.get(0), e);
        }
    }

    static boolean isThere(String name) {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(":", -1))
            if (Files.isExecutable(Path.of(folder, name))) return true;
        return false;
    }
}
