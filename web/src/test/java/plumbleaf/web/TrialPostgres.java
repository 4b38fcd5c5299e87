package plumbleaf.web;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * One PostgreSQL for all tests of a run, on loopback only, with a fresh database for each test that asks. It comes through Maven; where
 * {@code PLUMBLEAF_TEST_POSTGRES} is the address of a server ({@code jdbc:postgresql://127.0.0.1:5432/DATABASE?user=postgres}, the word
 * DATABASE as it stands), that one is used instead.
 */
public final class TrialPostgres {
    private static final AtomicInteger MADE = new AtomicInteger();

    /** The library's own ten seconds are short for a server that was killed, on a slow disk. */
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    private TrialPostgres() {}

    /** Started by the first who asks, stopped with the tests. */
    private static final class Server {
        static final String ADDRESS = address();

        private static String address() {
            String running = System.getenv("PLUMBLEAF_TEST_POSTGRES");
            if (running != null && !running.isBlank()) return running;
            try {
                EmbeddedPostgres started = configured().start();
                return "jdbc:postgresql://127.0.0.1:" + started.getPort() + "/DATABASE?user=postgres";
            } catch (IOException e) {
                throw new UncheckedIOException("PostgreSQL for the tests did not start", e);
            }
        }

        static String of(String database) {
            return ADDRESS.replace("DATABASE", database);
        }
    }

    /** The address of an empty database. */
    public static String emptyStore() {
        String name =
                "trial" + MADE.incrementAndGet() + "x" + ProcessHandle.current().pid();
        try (Connection server = DriverManager.getConnection(Server.of("postgres"));
                Statement statement = server.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException e) {
            throw new IllegalStateException("No database could be made for a test", e);
        }
        return Server.of(name);
    }

    private static EmbeddedPostgres.Builder configured() {
        return EmbeddedPostgres.builder()
                .setPGStartupWait(PATIENCE)
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("max_connections", "200")
                .setServerConfig("listen_addresses", "127.0.0.1");
    }

    /** A server of a test's own on a folder that is kept, so that it can be killed and started again. */
    public static OwnServer startOn(Path data) throws IOException {
        return new OwnServer(
                configured().setDataDirectory(data).setCleanDataDirectory(false).start());
    }

    /** One that runs until it is closed or killed. */
    public record OwnServer(EmbeddedPostgres server) implements AutoCloseable {
        public String place() {
            return "jdbc:postgresql://127.0.0.1:" + server.getPort() + "/postgres?user=postgres";
        }

        @Override
        public void close() throws IOException {
            server.close();
        }
    }
}
