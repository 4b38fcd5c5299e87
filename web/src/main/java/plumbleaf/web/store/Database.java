package plumbleaf.web.store;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationInfoService;
import org.flywaydb.core.api.MigrationState;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.sqlite.SQLiteConfig;

/**
 * The one place where everything is kept: an SQLite file, or a PostgreSQL that several nodes share. The same migrations and the same SQL
 * serve both. Opening brings an older one up to date.
 */
public final class Database implements AutoCloseable {
    /**
     * Write-ahead log, so reading never waits; a writer waits up to ten seconds for another; write locks are taken when a transaction
     * begins, because a lock taken late cannot wait; every commit is synced, so what was answered survives a power cut.
     */
    private static final Map<String, String> SQLITE = Map.of(
            "journal_mode", "WAL",
            "busy_timeout", "10000",
            "foreign_keys", "on",
            "transaction_mode", "IMMEDIATE",
            "synchronous", "FULL");

    private static final int SQLITE_CONNECTIONS = 4;
    private static final int POSTGRES_CONNECTIONS = 10;
    private static final String LATEST = "latest";

    private final String place;
    private final HikariDataSource pool;
    private final boolean postgres;
    private final JdbcClient sql;
    private final PlatformTransactionManager transactions;
    private final TransactionTemplate together;
    private String version = "";

    private Database(String place, HikariDataSource pool, boolean postgres) {
        this.place = place;
        this.pool = pool;
        this.postgres = postgres;
        this.sql = JdbcClient.create(pool);
        this.transactions = new JdbcTransactionManager(pool);
        this.together = new TransactionTemplate(transactions);
    }

    /**
     * Opens a store and brings it up to date.
     *
     * @param place the path of an SQLite file, made where it is missing, or {@code jdbc:postgresql://...}
     */
    public static Database open(String place) {
        return openAt(place, LATEST);
    }

    /** Opens a store, going no further than one version of the migrations; for reading what an older program wrote. */
    public static Database openAt(String place, String version) {
        boolean postgres = place.startsWith("jdbc:postgresql:");
        if (!postgres && place.startsWith("jdbc:"))
            throw new CannotOpen("it is a file, or a PostgreSQL as jdbc:postgresql://...", null);
        HikariDataSource pool = new HikariDataSource();
        pool.setPoolName("store");
        if (postgres) {
            pool.setJdbcUrl(place);
            pool.setMaximumPoolSize(POSTGRES_CONNECTIONS);
            // Whatever the server's default: what was answered is on its disk.
            pool.setConnectionInitSql("set synchronous_commit = on");
        } else {
            pool.setJdbcUrl("jdbc:sqlite:" + fileReady(Path.of(place)));
            SQLITE.forEach(pool::addDataSourceProperty);
            pool.setMaximumPoolSize(SQLITE_CONNECTIONS);
        }
        Database opened = new Database(place, pool, postgres);
        try {
            if (version.equals(LATEST)) opened.refuseNewer();
            opened.migrations(version).migrate();
            opened.version =
                    String.valueOf(opened.migrations(version).info().current().getVersion());
        } catch (RuntimeException e) {
            opened.close();
            throw CannotOpen.because(e);
        }
        return opened;
    }

    /** A program that does not know a store's tables would save past them, so it leaves them alone. */
    private void refuseNewer() {
        MigrationInfoService info = migrations(LATEST).info();
        String known = "";
        String ahead = "";
        for (MigrationInfo one : info.all()) {
            boolean future =
                    one.getState() == MigrationState.FUTURE_SUCCESS || one.getState() == MigrationState.FUTURE_FAILED;
            if (future) ahead = String.valueOf(one.getVersion());
            else known = String.valueOf(one.getVersion());
        }
        if (!ahead.isEmpty())
            throw new CannotOpen(
                    "a newer Plumbleaf keeps its jobs there (version " + ahead + " of the store, this program knows "
                            + known + "); bring this program up to date",
                    null);
    }

    private Flyway migrations(String version) {
        FluentConfiguration configuration = Flyway.configure(Database.class.getClassLoader())
                .dataSource(pool)
                .locations("classpath:db/migration")
                .placeholders(Map.of("bytes", postgres ? "bytea" : "blob"));
        if (!version.equals(LATEST)) configuration.target(MigrationVersion.fromVersion(version));
        return configuration.load();
    }

    /** The version of the migrations it stands at. */
    public String version() {
        return version;
    }

    public boolean isPostgres() {
        return postgres;
    }

    public DataSource dataSource() {
        return pool;
    }

    public PlatformTransactionManager transactions() {
        return transactions;
    }

    public JdbcClient sql() {
        return sql;
    }

    /**
     * A connection that sees the store as it is at its first question, whatever is saved meanwhile, and keeps nobody from saving. To be
     * closed.
     */
    public Connection snapshot() throws SQLException {
        Connection connection;
        if (postgres) {
            connection = DriverManager.getConnection(place);
            connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
            connection.setReadOnly(true);
        } else {
            SQLiteConfig reading = new SQLiteConfig();
            reading.setTransactionMode(SQLiteConfig.TransactionMode.DEFERRED);
            reading.setBusyTimeout(10_000);
            connection = reading.createConnection(pool.getJdbcUrl());
        }
        connection.setAutoCommit(false);
        return connection;
    }

    /** The tables that hold what people made; inside a transaction as that one sees them. */
    public Tables tables() {
        return Objects.requireNonNull(new JdbcTemplate(pool).execute((ConnectionCallback<Tables>) Tables::of));
    }

    /** Does all of it or nothing; when this returns it is on disk. Inside another it is part of that one. */
    public <T> T together(Supplier<T> work) {
        return together.execute(status -> work.get());
    }

    public void doTogether(Runnable work) {
        together.executeWithoutResult(status -> work.run());
    }

    @Override
    public void close() {
        pool.close();
    }

    private static Path fileReady(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        try {
            Files.createDirectories(absolute.getParent());
        } catch (IOException e) {
            throw new CannotOpen("the folder " + absolute.getParent() + " cannot be made", e);
        }
        return absolute;
    }
}
