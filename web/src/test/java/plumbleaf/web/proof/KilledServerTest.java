package plumbleaf.web.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledIfEnvironmentVariable;
import plumbleaf.web.TrialPostgres;
import plumbleaf.web.store.Database;

/**
 * Under a process that saves the PostgreSQL server itself is killed with SIGKILL, all of it, again and again: it comes up from its log with
 * all that it acknowledged. {@code -Dplumbleaf.server-kills=200} is the long form.
 */
@DisabledIfEnvironmentVariable(
        named = "PLUMBLEAF_TEST_POSTGRES",
        matches = ".+",
        disabledReason = "a server of somebody else's is not killed")
@Tag("slow")
class KilledServerTest {
    private static final int KILLS = Integer.getInteger("plumbleaf.server-kills", 2);
    private static final long SEED = 1623;
    private static final long ENDED_MS = TimeUnit.MINUTES.toMillis(2);

    @Test
    void nothingThatAServerAcknowledgedIsLostWhenItIsKilled() throws Exception {
        Path data = Files.createTempDirectory("plumbleaf-server").resolve("data");
        Random random = new Random(SEED);
        List<String> said = List.of();
        long acknowledged = 0;
        for (int i = 0; i <= KILLS; i++) {
            try (TrialPostgres.OwnServer server = TrialPostgres.startOn(data)) {
                if (i == 0) Database.open(server.place()).close();
                else acknowledged += KilledWhileSavingRules.check(server.place(), said);
                if (i == KILLS) break;
                try (OtherProcess saver = OtherProcess.start(Saver.class, server.place())) {
                    int first = 3 + random.nextInt(60);
                    saver.line(line -> line.endsWith(" " + first));
                    Thread.sleep(random.nextInt(60));
                    kill(data);
                    said = saver.kill();
                }
            }
        }
        assertThat(acknowledged).isGreaterThan(KILLS * 5L);
    }

    /** The server that runs on a folder and every process it made. */
    private static void kill(Path data) throws Exception {
        long first = Long.parseLong(
                Files.readAllLines(data.resolve("postmaster.pid")).get(0).strip());
        ProcessHandle server = ProcessHandle.of(first).orElseThrow();
        // Held still it makes none more while they are counted: one that is left would keep the folder from the next
        // server.
        new ProcessBuilder("sh", "-c", "kill -STOP " + first).start().waitFor();
        List<ProcessHandle> all = new ArrayList<>(server.descendants().toList());
        server.destroyForcibly();
        for (ProcessHandle one : all) one.destroyForcibly();
        all.add(server);
        long until = System.currentTimeMillis() + ENDED_MS;
        while (all.stream().anyMatch(ProcessHandle::isAlive)) {
            if (System.currentTimeMillis() > until) throw new AssertionError("The server does not die");
            Thread.sleep(10);
        }
    }
}
