package plumbleaf.web.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.datasource.DataSourceUtils;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node.ObjectNode;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.Tables;

/**
 * A backup: every row of every table as it stood at one moment, taken while people work, from either kind of store, for either kind.
 * Restoring proves the whole file first, brings it up to date in a store of its own, copies it in one transaction, and counts and
 * digests again before it is kept.
 */
public final class Backup {
    public static final String FORMAT = "plumbleaf-backup";
    private static final int VERSION = 1;

    private Backup() {}

    /** What a backup holds. */
    public record Content(String schema, Map<String, Long> rows) {
        public long jobs() {
            return rows.getOrDefault("job", 0L);
        }
    }

    /** Writes a backup and reads it again. */
    public static Content write(Database store, Path file, Clock clock) {
        Map<String, Long> counts = new LinkedHashMap<>();
        try (Connection snapshot = store.snapshot();
                SealedZip zip = new SealedZip(file)) {
            Rows rows = new Rows(snapshot, Tables.of(snapshot));
            for (String table : rows.tables().names())
                zip.put(entry(table), out -> counts.put(table, lines(rows, table, out)));
            Json.Members head = Json.object()
                    .put("format", FORMAT)
                    .put("version", VERSION)
                    .put("schema", store.version())
                    .put("madeAt", Json.count(clock.millis()));
            zip.seal(head);
            snapshot.rollback();
        } catch (SQLException e) {
            throw new IllegalStateException("The store could not be read for a backup", e);
        } catch (IOException e) {
            throw new UncheckedIOException("The backup could not be written", e);
        }
        try (Unsealed again = Unsealed.open(file, FORMAT)) {
            return new Content(Rows.text(again.manifest(), "schema"), counts);
        } catch (IOException e) {
            throw new UncheckedIOException("The backup just written could not be read again", e);
        }
    }

    private static String entry(String table) {
        return "tables/" + table + ".jsonl";
    }

    private static long lines(Rows rows, String table, OutputStream out) {
        long[] count = {0};
        try {
            rows.each(table, row -> {
                try {
                    out.write((JsonWriter.compact(row) + "\n").getBytes(StandardCharsets.UTF_8));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
                count[0]++;
            });
        } catch (SQLException e) {
            throw new IllegalStateException("The store could not be read for a backup", e);
        }
        return count[0];
    }

    /**
     * Restores a backup, whole or not at all.
     *
     * @param place where to; made where it is missing
     * @param over  whether what is there may be replaced
     */
    public static Content restore(Path file, String place, boolean over) {
        Path folder = freshFolder();
        try (Unsealed backup = Unsealed.open(file, FORMAT)) {
            String aside = folder.resolve("restore.db").toString();
            load(backup, aside);
            try (Database upToDate = Database.open(aside);
                    Database target = Database.open(place)) {
                return target.together(() -> copied(upToDate, target, over));
            }
        } catch (IOException e) {
            throw new NotTaken("this file cannot be read", e);
        } catch (SQLException | DataAccessException e) {
            throw new NotTaken("what it holds does not fit together", e);
        } finally {
            delete(folder);
        }
    }

    /** Into an empty store of the version it was made with. */
    private static void load(Unsealed backup, String aside) throws SQLException {
        String version = Rows.text(backup.manifest(), "schema");
        if (!version.matches("\\d{1,6}")) throw new NotTaken("it does not say which version of the store made it");
        try (Database asItWas = Database.openAt(aside, version)) {
            if (!asItWas.version().equals(version))
                throw new NotTaken("a newer Plumbleaf made it; restore it with that one");
            try (Connection connection = asItWas.dataSource().getConnection()) {
                connection.setAutoCommit(false);
                Rows rows = new Rows(connection, Tables.of(connection));
                List<String> wanted =
                        rows.tables().names().stream().map(Backup::entry).toList();
                if (!wanted.equals(backup.names())) throw new NotTaken("it has not the tables of its version");
                for (String table : rows.tables().names()) {
                    rows.clear(table);
                    try (Rows.Insert insert = rows.new Insert(table)) {
                        backup.lines(entry(table), line -> insert.row(Unsealed.object(line)));
                    }
                }
                connection.commit();
            }
        }
    }

    private static Content copied(Database from, Database to, boolean over) {
        Connection target = DataSourceUtils.getConnection(to.dataSource());
        try (Connection source = from.snapshot()) {
            Rows reading = new Rows(source, Tables.of(source));
            Rows writing = new Rows(target, Tables.of(target));
            if (!over && !isEmpty(writing))
                throw new NotTaken("there are jobs or people in the store already; add --over to replace them");
            List<String> names = writing.tables().names();
            for (int i = names.size() - 1; i >= 0; i--) writing.clear(names.get(i));
            to.sql().sql("delete from spring_session").update();
            Map<String, Long> counts = new LinkedHashMap<>();
            for (String table : names) {
                try (Rows.Insert insert = writing.new Insert(table)) {
                    reading.each(table, row -> insert(insert, row));
                }
                Sum before = Sum.of(reading, table);
                Sum after = Sum.of(writing, table);
                if (!before.equals(after)) throw new IllegalStateException("Table " + table + " did not arrive whole");
                counts.put(table, after.rows());
            }
            return new Content(to.version(), counts);
        } catch (SQLException e) {
            throw new NotTaken("what it holds does not fit together", e);
        }
    }

    private static void insert(Rows.Insert insert, ObjectNode row) {
        try {
            insert.row(row);
        } catch (SQLException e) {
            throw new NotTaken("what it holds does not fit together", e);
        }
    }

    private static boolean isEmpty(Rows rows) throws SQLException {
        return rows.all("job").isEmpty() && rows.all("person").isEmpty();
    }

    /** How many rows, and the sum of their digests: the same whatever order a database gives them in. */
    record Sum(long rows, BigInteger digests) {
        static Sum of(Rows rows, String table) throws SQLException {
            long[] count = {0};
            BigInteger[] sum = {BigInteger.ZERO};
            rows.each(table, row -> {
                count[0]++;
                byte[] line = JsonWriter.compact(row).getBytes(StandardCharsets.UTF_8);
                sum[0] = sum[0].add(new BigInteger(1, SealedZip.digest().digest(line)));
            });
            return new Sum(count[0], sum[0]);
        }
    }

    private static Path freshFolder() {
        try {
            return Files.createTempDirectory("plumbleaf-restore");
        } catch (IOException e) {
            throw new UncheckedIOException("There is no room to restore in", e);
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) Files.deleteIfExists(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
