package plumbleaf.web.archive;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.Tables;

/** Stores as earlier versions left them, with a row in every table that each version could hold. */
final class OldStore {
    private static final Pattern MIGRATION = Pattern.compile("V(\\d+)__.*\\.sql");
    private static final Pattern BYTES = Pattern.compile("BYTES:([0-9a-f]*)");

    private OldStore() {}

    /** The versions of the migrations there are, each with the SHA-256 of its SQL. */
    static SortedMap<Integer, String> versions() throws IOException {
        SortedMap<Integer, String> versions = new TreeMap<>();
        Resource[] found = new PathMatchingResourcePatternResolver(Database.class.getClassLoader())
                .getResources("classpath:db/migration/*.sql");
        for (Resource migration : found) {
            Matcher name = MIGRATION.matcher(String.valueOf(migration.getFilename()));
            if (!name.matches()) throw new AssertionError("Not the name of a migration: " + migration);
            versions.put(Integer.parseInt(name.group(1)), sha256(migration.getContentAsByteArray()));
        }
        return versions;
    }

    /** What one version added, as SQL. */
    static String rows(int version) throws IOException {
        try (InputStream file = OldStore.class.getResourceAsStream("/plumbleaf/web/schemas/" + version + ".sql")) {
            if (file == null)
                throw new AssertionError("Version " + version + " of the store has no rows to be brought up to date");
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Makes a store of a version and puts into it what each version up to then could hold. */
    static Database make(String place, int version, String password) throws IOException, SQLException {
        Database store = Database.openAt(place, String.valueOf(version));
        try (Connection connection = store.dataSource().getConnection();
                Statement statement = connection.createStatement()) {
            for (int i = 1; i <= version; i++)
                for (String line : rows(i).split(";\n", -1)) {
                    if (line.isBlank()) continue;
                    String bytes = store.isPostgres() ? "'\\\\x$1'" : "X'$1'";
                    statement.execute(
                            BYTES.matcher(line.replace("PASSWORD", password)).replaceAll(bytes));
                }
        }
        return store;
    }

    /** Every row of some tables, as text, in the columns that they had. */
    static Map<String, List<String>> content(Database store, Tables then) throws SQLException {
        Map<String, List<String>> content = new LinkedHashMap<>();
        try (Connection connection = store.dataSource().getConnection();
                Statement statement = connection.createStatement()) {
            for (Map.Entry<String, List<String>> table : then.columns().entrySet()) {
                List<String> rows = new ArrayList<>();
                String names = String.join(", ", table.getValue());
                try (ResultSet found = statement.executeQuery("select " + names + " from " + table.getKey())) {
                    while (found.next()) {
                        StringBuilder row = new StringBuilder();
                        for (int i = 1; i <= table.getValue().size(); i++)
                            row.append(
                                            found.getObject(i) instanceof byte[] bytes
                                                    ? Base64.getEncoder().encodeToString(bytes)
                                                    : found.getString(i))
                                    .append('|');
                        rows.add(row.toString());
                    }
                }
                content.put(table.getKey(), rows.stream().sorted().toList());
            }
        }
        return content;
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
