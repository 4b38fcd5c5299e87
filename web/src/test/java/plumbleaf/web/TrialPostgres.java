package plumbleaf.web;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * One PostgreSQL for all tests of a run, with a fresh database for each that asks. {@code PLUMBLEAF_TEST_POSTGRES} names another server
 * ({@code jdbc:postgresql://host:port/%s?user=...}, the tests make databases there); without it one is started here, on loopback only.
 */
public final class TrialPostgres {
    private static final AtomicInteger MADE = new AtomicInteger();

    private TrialPostgres() {}

    /** Started by the first who asks, stopped with the tests. */
    private static final class Server {
        static final EmbeddedPostgres ONE = start();

        private static EmbeddedPostgres start() {
            try {
                return EmbeddedPostgres.builder()
                        .setServerConfig("fsync", "on")
                        .setServerConfig("synchronous_commit", "on")
                        .setServerConfig("max_connections", "200")
                        .setServerConfig("listen_addresses", "127.0.0.1")
                        .start();
            } catch (IOException e) {
                throw new UncheckedIOException("PostgreSQL for the tests did not start", e);
            }
        }
    }

    /** The address of an empty database. */
    public static String emptyStore() {
        String name =
                "trial" + MADE.incrementAndGet() + "x" + ProcessHandle.current().pid();
        try (Connection server = Server.ONE.getPostgresDatabase().getConnection();
                Statement statement = server.createStatement()) {
            statement.execute("create database " + name);
        } catch (SQLException e) {
            throw new IllegalStateException("No database could be made for a test", e);
        }
        return "jdbc:postgresql://127.0.0.1:" + Server.ONE.getPort() + "/" + name + "?user=postgres";
    }
}
