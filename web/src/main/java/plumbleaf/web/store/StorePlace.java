package plumbleaf.web.store;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import javax.sql.DataSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/**
 * Where the jobs are kept: one setting, {@code plumbleaf.store}, either the path of an SQLite file or the address of a PostgreSQL
 * database ({@code jdbc:postgresql://...}).
 */
@Configuration(proxyBeanMethods = false)
class StorePlace {
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

    @Bean
    Clock clock() {
        return Clock.systemUTC();
    }

    @Bean
    DataSource store(@Value("${plumbleaf.store}") String place) {
        HikariDataSource pool = new HikariDataSource();
        if (place.startsWith("jdbc:postgresql:")) {
            pool.setJdbcUrl(place);
            pool.setMaximumPoolSize(POSTGRES_CONNECTIONS);
        } else {
            pool.setJdbcUrl("jdbc:sqlite:" + fileReady(Path.of(place)));
            SQLITE.forEach(pool::addDataSourceProperty);
            pool.setMaximumPoolSize(SQLITE_CONNECTIONS);
        }
        pool.setPoolName("store");
        return pool;
    }

    private static Path fileReady(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        try {
            Files.createDirectories(absolute.getParent());
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot make the folder for the store " + absolute, e);
        }
        return absolute;
    }
}
