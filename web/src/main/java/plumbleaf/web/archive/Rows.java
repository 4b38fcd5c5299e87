package plumbleaf.web.archive;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.Member;
import plumbleaf.jobfile.json.Node.ObjectNode;
import plumbleaf.jobfile.json.Place;
import plumbleaf.web.store.Tables;

/** Rows of tables as JSON objects, and back. A name of a table or column is only ever one that the database itself listed. */
final class Rows {
    private static final Place NOWHERE = new Place(0, 0);
    private static final String BYTES = "base64";
    private static final int AT_ONCE = 50;

    private final Connection connection;
    private final Tables tables;

    Rows(Connection connection, Tables tables) {
        this.connection = connection;
        this.tables = tables;
    }

    /** Every row of a table, one after the other, in the order of its columns. */
    void each(String table, Consumer<ObjectNode> use) throws SQLException {
        select(table, "", "", use);
    }

    List<ObjectNode> of(String table, String column, String value) throws SQLException {
        List<ObjectNode> rows = new ArrayList<>();
        select(table, " where " + column(table, column) + " = ?", value, rows::add);
        return rows;
    }

    List<ObjectNode> all(String table) throws SQLException {
        List<ObjectNode> rows = new ArrayList<>();
        each(table, rows::add);
        return rows;
    }

    private void select(String table, String where, String value, Consumer<ObjectNode> use) throws SQLException {
        List<String> columns = columnsOf(table);
        String query = "select " + String.join(", ", columns) + " from " + table + where;
        try (PreparedStatement statement = connection.prepareStatement(query)) {
            statement.setFetchSize(AT_ONCE);
            if (!where.isEmpty()) statement.setString(1, value);
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) use.accept(row(rows, columns));
            }
        }
    }

    private static ObjectNode row(ResultSet rows, List<String> columns) throws SQLException {
        List<Member> members = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++)
            members.add(new Member(columns.get(i), NOWHERE, value(rows.getObject(i + 1))));
        return new ObjectNode(NOWHERE, members, List.of());
    }

    private static Node value(@Nullable Object value) {
        if (value == null) return Json.nothing();
        if (value instanceof String text) return Json.text(text);
        if (value instanceof byte[] bytes)
            return Json.object()
                    .put(BYTES, Base64.getEncoder().encodeToString(bytes))
                    .build();
        if (value instanceof Long || value instanceof Integer) return Json.count(((Number) value).longValue());
        throw new IllegalStateException("A column holds what a backup cannot: " + value.getClass());
    }

    /** Writes rows into a table. All of them have the columns of the first. */
    final class Insert implements AutoCloseable {
        private final String table;
        private final List<String> columns;
        private final PreparedStatement statement;

        Insert(String table) throws SQLException {
            this.table = table;
            this.columns = Optional.ofNullable(tables.columns().get(table))
                    .orElseThrow(() -> new NotTaken("there is no table " + table));
            String places = "?, ".repeat(columns.size() - 1) + "?";
            this.statement = connection.prepareStatement(
                    "insert into " + table + " (" + String.join(", ", columns) + ") values (" + places + ")");
        }

        void row(ObjectNode row) throws SQLException {
            for (Member member : row.members()) column(table, member.key());
            if (row.members().size() != columns.size() || !row.doubled().isEmpty())
                throw new NotTaken("a row of " + table + " has not the columns of the table");
            for (int i = 0; i < columns.size(); i++) {
                Node value = row.get(columns.get(i)).orElseThrow();
                set(i + 1, value);
            }
            statement.executeUpdate();
        }

        private void set(int place, Node value) throws SQLException {
            Optional<String> text = value.asText();
            Optional<String> number = value.asNumber();
            Optional<String> bytes = value.asObject().flatMap(o -> o.get(BYTES)).flatMap(Node::asText);
            try {
                if (text.isPresent()) statement.setString(place, text.get());
                else if (number.isPresent()) statement.setLong(place, Long.parseLong(number.get()));
                else if (bytes.isPresent())
                    statement.setBytes(place, Base64.getDecoder().decode(bytes.get()));
                else if (value.what().equals("null")) statement.setObject(place, null);
                else throw new NotTaken("a row of " + table + " holds " + value.what());
            } catch (IllegalArgumentException wrong) {
                throw new NotTaken("a row of " + table + " holds what is no whole number or no bytes");
            }
        }

        @Override
        public void close() throws SQLException {
            statement.close();
        }
    }

    private List<String> columnsOf(String table) {
        return Objects.requireNonNull(tables.columns().get(table), table);
    }

    void clear(String table) throws SQLException {
        column(table, columnsOf(table).get(0));
        try (PreparedStatement statement = connection.prepareStatement("delete from " + table)) {
            statement.executeUpdate();
        }
    }

    Tables tables() {
        return tables;
    }

    private String column(String table, String column) {
        List<String> columns = columnsOf(table);
        if (columns == null || !columns.contains(column)) throw new NotTaken("there is no " + column + " in " + table);
        return column;
    }

    /** The row with one value taken out, or with one put in. */
    static ObjectNode without(ObjectNode row, String key) {
        return new ObjectNode(
                row.place(),
                row.members().stream()
                        .filter(member -> !member.key().equals(key))
                        .toList(),
                List.of());
    }

    static ObjectNode with(ObjectNode row, String key, Node value) {
        List<Member> members = new ArrayList<>(without(row, key).members());
        members.add(new Member(key, NOWHERE, value));
        return new ObjectNode(row.place(), members, List.of());
    }

    static String text(ObjectNode row, String key) {
        return row.get(key).flatMap(Node::asText).orElseThrow(() -> new NotTaken("a row has no " + key));
    }

    static long number(ObjectNode row, String key) {
        try {
            return Long.parseLong(
                    row.get(key).flatMap(Node::asNumber).orElseThrow(() -> new NotTaken("a row has no " + key)));
        } catch (NumberFormatException e) {
            throw new NotTaken("a row has a " + key + " that is no whole number");
        }
    }

    static Node bytes(byte[] bytes) {
        return Json.object()
                .put(BYTES, Base64.getEncoder().encodeToString(bytes))
                .build();
    }

    static byte[] bytes(ObjectNode row, String key) {
        return Base64.getDecoder()
                .decode(row.get(key)
                        .flatMap(Node::asObject)
                        .flatMap(o -> o.get(BYTES))
                        .flatMap(Node::asText)
                        .orElseThrow(() -> new NotTaken("a row has no " + key)));
    }
}
