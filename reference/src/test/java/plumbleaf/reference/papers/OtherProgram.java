package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;

/** A program of this machine that looks at what was written, where it is installed. */
final class OtherProgram {
    private OtherProgram() {}

    /** Whether it is there and ends well. */
    static boolean runs(String... command) {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException absent) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** What it says; it must end well. */
    static String answer(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        try (InputStream out = process.getInputStream()) {
            String answer = new String(out.readAllBytes(), StandardCharsets.UTF_8).strip();
            assertThat(process.waitFor()).as(answer).isZero();
            return answer;
        }
    }
}
