package plumbleaf.web.store;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * The tables that hold what people made, as the database itself lists them, each after those it leans on. What only lives for a while,
 * sign-ins and refusals at the door, and what is worked out again, the cards of the desk, is not among them.
 *
 * @param columns the names of each table's columns, in their own order
 */
public record Tables(Map<String, List<String>> columns) {
    private static final Set<String> PASSING = Set.of(
            "flyway_schema_history", "spring_session", "spring_session_attributes", "refused_sign_in", "desk_card");

    public Tables {
        Map<String, List<String>> copy = new LinkedHashMap<>();
        columns.forEach((table, names) -> copy.put(table, List.copyOf(names)));
        columns = copy;
    }

    public static Tables of(Connection connection) throws SQLException {
        DatabaseMetaData about = connection.getMetaData();
        boolean postgres = about.getDatabaseProductName().equals("PostgreSQL");
        String schema = postgres ? "public" : null;
        Map<String, Set<String>> needs = new TreeMap<>();
        try (ResultSet rows = about.getTables(null, schema, "%", new String[] {"TABLE"})) {
            while (rows.next()) {
                String name = rows.getString("TABLE_NAME").toLowerCase(Locale.ROOT);
                if (!PASSING.contains(name) && !name.startsWith("sqlite_")) needs.put(name, new TreeSet<>());
            }
        }
        for (Map.Entry<String, Set<String>> table : needs.entrySet()) {
            try (ResultSet keys = about.getImportedKeys(null, schema, table.getKey())) {
                while (keys.next())
                    table.getValue().add(keys.getString("PKTABLE_NAME").toLowerCase(Locale.ROOT));
            }
        }
        Map<String, List<String>> columns = new LinkedHashMap<>();
        for (String table : inOrder(needs)) columns.put(table, columns(about, schema, table));
        return new Tables(columns);
    }

    private static List<String> columns(DatabaseMetaData about, @Nullable String schema, String table)
            throws SQLException {
        Map<Integer, String> byPlace = new TreeMap<>();
        try (ResultSet rows = about.getColumns(null, schema, table, "%")) {
            while (rows.next())
                byPlace.put(
                        rows.getInt("ORDINAL_POSITION"),
                        rows.getString("COLUMN_NAME").toLowerCase(Locale.ROOT));
        }
        return List.copyOf(byPlace.values());
    }

    private static List<String> inOrder(Map<String, Set<String>> needs) {
        Set<String> done = new LinkedHashSet<>();
        while (done.size() < needs.size()) {
            int before = done.size();
            needs.forEach((table, leansOn) -> {
                Set<String> open = new TreeSet<>(leansOn);
                open.removeAll(done);
                open.remove(table);
                if (open.isEmpty()) done.add(table);
            });
            if (done.size() == before)
                throw new IllegalStateException("Tables lean on each other in a circle: " + needs);
        }
        return new ArrayList<>(done);
    }

    public List<String> names() {
        return List.copyOf(columns.keySet());
    }
}
