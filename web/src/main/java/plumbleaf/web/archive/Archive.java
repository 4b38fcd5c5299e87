package plumbleaf.web.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.datasource.DataSourceUtils;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.ArrayNode;
import plumbleaf.jobfile.json.Node.ObjectNode;
import plumbleaf.web.files.FileKind;
import plumbleaf.web.people.Role;
import plumbleaf.web.people.Secret;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.Tables;

/**
 * Everything as JSON and files that any program can read: each job's text, every revision of it, its history and its files, and the
 * people. No password, key or link is in it: people who come in by an archive set a password anew, links to customers stay shut. What is
 * exported, imported and exported again is the same to the byte.
 */
public final class Archive {
    public static final String FORMAT = "plumbleaf-archive";
    private static final int VERSION = 1;
    /** The tables that hang on a job, and those whose rows are kept elsewhere or not at all. */
    private static final List<String> OF_A_JOB = List.of("revision", "move", "attachment", "customer_link");

    private static final Set<String> NOT_OF_THE_HOUSE = Set.of(
            "job",
            "revision",
            "move",
            "attachment",
            "customer_link",
            "acceptance",
            "setting",
            "invitation",
            "api_token");

    private Archive() {}

    /** How many jobs came or went, and how many were there already. */
    public record Content(int jobs, int known) {}

    public static Content write(Database store, Path file) {
        int jobs = 0;
        try (Connection snapshot = store.snapshot();
                SealedZip zip = new SealedZip(file)) {
            Rows rows = new Rows(snapshot, Tables.of(snapshot));
            for (ObjectNode job : sorted(rows.all("job"), "id")) {
                putJob(rows, job, zip);
                jobs++;
            }
            putHouse(rows, zip);
            zip.seal(Json.object().put("format", FORMAT).put("version", VERSION).put("schema", store.version()));
            snapshot.rollback();
        } catch (SQLException e) {
            throw new IllegalStateException("The store could not be read for an archive", e);
        } catch (IOException e) {
            throw new UncheckedIOException("The archive could not be written", e);
        }
        return new Content(jobs, 0);
    }

    private static void putJob(Rows rows, ObjectNode job, SealedZip zip) throws SQLException, IOException {
        String id = Rows.text(job, "id");
        String at = "jobs/" + id + "/";
        long present = Rows.number(job, "revision");
        for (ObjectNode revision : sortedByNumber(rows.of("revision", "job", id), "number")) {
            byte[] text = Rows.text(revision, "document").getBytes(StandardCharsets.UTF_8);
            long number = Rows.number(revision, "number");
            zip.put(at + "revisions/" + number + ".json", text);
            if (number == present) zip.put(at + "job.json", text);
        }
        for (ObjectNode attachment : sorted(rows.of("attachment", "job", id), "id"))
            zip.put(at + "files/" + Rows.text(attachment, "id"), Rows.bytes(attachment, "content"));
        zip.put(at + "history.json", JsonWriter.write(history(rows, job)).getBytes(StandardCharsets.UTF_8));
    }

    private static ObjectNode history(Rows rows, ObjectNode job) throws SQLException {
        String id = Rows.text(job, "id");
        List<ObjectNode> links = sorted(rows.of("customer_link", "job", id), "id");
        List<ObjectNode> accepted = new ArrayList<>();
        for (ObjectNode link : links) accepted.addAll(rows.of("acceptance", "link", Rows.text(link, "id")));
        return Json.object()
                .put("job", job)
                .put(
                        "revision",
                        sortedByNumber(rows.of("revision", "job", id), "number"),
                        r -> Rows.without(r, "document"))
                .put("move", sortedByNumber(rows.of("move", "job", id), "version"), r -> r)
                .put("attachment", sorted(rows.of("attachment", "job", id), "id"), r -> Rows.without(r, "content"))
                .put("customer_link", links, r -> Rows.without(r, "token"))
                .put("acceptance", accepted, r -> r)
                .build();
    }

    /** People without their passwords, the log, and every table that neither belongs to a job nor holds a secret. */
    private static void putHouse(Rows rows, SealedZip zip) throws SQLException, IOException {
        for (String table : houseTables(rows)) {
            List<String> lines = new ArrayList<>();
            rows.each(
                    table,
                    row -> lines.add(JsonWriter.compact(table.equals("person") ? Rows.without(row, "secret") : row)));
            lines.sort(Comparator.naturalOrder());
            zip.put(houseEntry(table), out -> {
                for (String line : lines) out.write((line + "\n").getBytes(StandardCharsets.UTF_8));
            });
        }
    }

    private static List<String> houseTables(Rows rows) {
        return rows.tables().names().stream()
                .filter(table -> !NOT_OF_THE_HOUSE.contains(table))
                .toList();
    }

    private static String houseEntry(String table) {
        return "house/" + table + ".jsonl";
    }

    /** Takes an archive in, whole or not at all. A job that is here already must be the same. */
    public static Content read(Path file, Database store) {
        try (Unsealed archive = Unsealed.open(file, FORMAT)) {
            return store.together(() -> taken(archive, store));
        } catch (IOException e) {
            throw new NotTaken("this file cannot be read", e);
        } catch (DataAccessException e) {
            throw new NotTaken("what it holds does not fit together", e);
        }
    }

    private static Content taken(Unsealed archive, Database store) {
        if (!Rows.text(archive.manifest(), "schema").equals(store.version()))
            throw new NotTaken("another version of Plumbleaf made it; take a backup there and restore that here");
        Connection connection = DataSourceUtils.getConnection(store.dataSource());
        try {
            Rows rows = new Rows(connection, Tables.of(connection));
            int came = 0;
            int known = 0;
            for (String name : archive.names()) {
                if (!name.matches("jobs/[^/]+/history\\.json")) continue;
                ObjectNode history = Unsealed.object(Unsealed.text(archive.bytes(name)));
                if (takeJob(archive, rows, name.split("/", -1)[1], history)) came++;
                else known++;
            }
            takeHouse(archive, rows);
            return new Content(came, known);
        } catch (SQLException e) {
            throw new NotTaken("what it holds does not fit together", e);
        }
    }

    /** False where the very same job is here already. */
    private static boolean takeJob(Unsealed archive, Rows rows, String id, ObjectNode history) throws SQLException {
        ObjectNode job = history.get("job").flatMap(Node::asObject).orElseThrow(() -> new NotTaken("a job is missing"));
        if (!JobId.isOne(id) || !Rows.text(job, "id").equals(id)) throw new NotTaken("a job lies under another's name");
        List<ObjectNode> here = rows.of("job", "id", id);
        if (!here.isEmpty()) {
            if (compared(history(rows, here.get(0))).equals(compared(history))) return false;
            throw new NotTaken("the job " + Rows.text(job, "title") + " is here already and differs");
        }
        String at = "jobs/" + id + "/";
        insert(rows, "job", List.of(job));
        for (String table : OF_A_JOB)
            for (ObjectNode row : list(history, table)) {
                if (!Rows.text(row, "job").equals(id)) throw new NotTaken("a row lies under another job's name");
                insert(rows, table, List.of(whole(archive, at, table, row)));
            }
        insert(rows, "acceptance", list(history, "acceptance"));
        return true;
    }

    /** Without where the job stands on the desk, which each house works out itself. */
    private static String compared(ObjectNode history) {
        ObjectNode job = history.get("job").flatMap(Node::asObject).orElseThrow();
        return JsonWriter.write(Rows.with(history, "job", Rows.without(job, "stage")));
    }

    private static ObjectNode whole(Unsealed archive, String at, String table, ObjectNode row) {
        return switch (table) {
            case "revision" -> {
                String text = Unsealed.text(archive.bytes(at + "revisions/" + Rows.number(row, "number") + ".json"));
                yield Rows.with(row, "document", Json.text(text));
            }
            case "attachment" -> {
                byte[] bytes = archive.bytes(at + "files/" + Rows.text(row, "id"));
                boolean asSaid = FileKind.of(bytes).map(FileKind::mediaType).equals(Optional.of(Rows.text(row, "kind")))
                        && SealedZip.hex(SealedZip.digest().digest(bytes)).equals(Rows.text(row, "digest"));
                if (!asSaid) throw new NotTaken("a file in it is not what it says it is");
                yield Rows.with(row, "content", Rows.bytes(bytes));
            }
            // No hash is ever this, so the link stays shut.
            case "customer_link" -> Rows.with(row, "token", Json.text("shut " + Secret.id()));
            default -> row;
        };
    }

    private static void takeHouse(Unsealed archive, Rows rows) throws SQLException {
        for (String table : houseTables(rows)) {
            List<ObjectNode> here = rows.all(table);
            Set<String> known = new TreeSet<>();
            for (ObjectNode row : here) known.add(JsonWriter.compact(row));
            try (Rows.Insert insert = rows.new Insert(table)) {
                archive.lines(houseEntry(table), line -> {
                    ObjectNode row = Unsealed.object(line);
                    if (table.equals("person")) takePerson(insert, here, row);
                    else if (!known.contains(JsonWriter.compact(row))) insert.row(row);
                });
            }
        }
    }

    /** Somebody who signs in under a name that is taken here is that person; anybody else comes without a password. */
    private static void takePerson(Rows.Insert insert, List<ObjectNode> here, ObjectNode person) throws SQLException {
        String signIn = Rows.text(person, "sign_in");
        String role = Rows.text(person, "role");
        if (List.of(Role.values()).stream().noneMatch(one -> one.key().equals(role)))
            throw new NotTaken("somebody in it has a role that is not known");
        boolean known = here.stream().anyMatch(one -> Rows.text(one, "sign_in").equals(signIn));
        if (!known) insert.row(Rows.with(person, "secret", Json.text("")));
    }

    private static void insert(Rows rows, String table, List<ObjectNode> all) throws SQLException {
        try (Rows.Insert insert = rows.new Insert(table)) {
            for (ObjectNode row : all) insert.row(row);
        }
    }

    private static List<ObjectNode> list(ObjectNode from, String key) {
        ArrayNode items =
                from.get(key).flatMap(Node::asArray).orElseThrow(() -> new NotTaken("its " + key + " is missing"));
        List<ObjectNode> rows = new ArrayList<>();
        for (Node item : items.items())
            rows.add(item.asObject().orElseThrow(() -> new NotTaken("its " + key + " is damaged")));
        return rows;
    }

    private static List<ObjectNode> sorted(List<ObjectNode> rows, String key) {
        return rows.stream()
                .sorted(Comparator.comparing(row -> Rows.text(row, key)))
                .toList();
    }

    private static List<ObjectNode> sortedByNumber(List<ObjectNode> rows, String key) {
        return rows.stream()
                .sorted(Comparator.comparingLong(row -> Rows.number(row, key)))
                .toList();
    }
}
