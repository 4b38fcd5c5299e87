package plumbleaf.web.proof;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** A Java program of the tests in a process of its own, so that it can be killed. What it prints is read as it comes. */
final class OtherProcess implements AutoCloseable {
    private final Process process;
    private final List<String> lines = new ArrayList<>();
    private final Thread reading;

    private OtherProcess(Process process) {
        this.process = process;
        this.reading = new Thread(this::read, "reads another process");
        reading.setDaemon(true);
        reading.start();
    }

    static OtherProcess start(Class<?> program, String... words) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx400m",
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                program.getName()));
        command.addAll(List.of(words));
        try {
            return new OtherProcess(new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void read() {
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                synchronized (lines) {
                    lines.add(line);
                    lines.notifyAll();
                }
            }
        } catch (IOException killed) {
            // What it printed before is kept.
        }
    }

    /** Waits for a line; four minutes at most: a node starts in eight seconds where it has a machine to itself. */
    String line(Predicate<String> wanted) throws InterruptedException {
        long until = System.nanoTime() + TimeUnit.MINUTES.toNanos(4);
        int from = 0;
        synchronized (lines) {
            while (true) {
                for (; from < lines.size(); from++) if (wanted.test(lines.get(from))) return lines.get(from);
                long left = TimeUnit.NANOSECONDS.toMillis(until - System.nanoTime());
                if (left <= 0 || (!process.isAlive() && !reading.isAlive()))
                    throw new AssertionError("The other process never said it; it said " + lines);
                lines.wait(Math.min(left, 200));
            }
        }
    }

    /** Ends it as a power cut would: SIGKILL, nothing tidied up. Returns all it printed. */
    List<String> kill() throws InterruptedException {
        // Through its handle: through the process itself Java would also throw away what it printed last.
        process.toHandle().destroyForcibly();
        process.waitFor();
        reading.join(TimeUnit.SECONDS.toMillis(10));
        synchronized (lines) {
            return List.copyOf(lines);
        }
    }

    /** Asks it to end (SIGTERM) and waits. */
    int end() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(60, TimeUnit.SECONDS)) throw new AssertionError("It does not end when asked to");
        return process.exitValue();
    }

    boolean isAlive() {
        return process.isAlive();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
