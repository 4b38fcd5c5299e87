package plumbleaf.reference.vectors;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/** The tables of worked examples under {@code plumbleaf/reference/vectors}. */
public final class Vectors {
    private Vectors() {}

    /** The named example of a table. */
    public static Vector one(String table, String id) {
        return all(table).stream()
                .filter(vector -> vector.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No " + id + " in " + table));
    }

    /** Every example of a table, in order. */
    public static List<Vector> all(String table) {
        CsvTable<Vector> read = CsvTable.read(
                table,
                text("/plumbleaf/reference/vectors/" + table + ".csv"),
                List.of("id", "topic", "inputs", "expected", "tolerance", "source", "confidence"),
                Vectors::vector);
        assertThat(read.errors()).isEmpty();
        return read.rows();
    }

    private static Vector vector(CsvRow row) {
        return new Vector(
                row.needed("id"),
                row.needed("topic"),
                pairs(row.needed("inputs")),
                pairs(row.needed("expected")),
                row.needed("tolerance"),
                row.needed("source"));
    }

    private static Map<String, String> pairs(String text) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String pair : List.of(text.split(";", -1))) {
            int at = pair.indexOf('=');
            assertThat(at).as(pair).isPositive();
            pairs.put(pair.substring(0, at), pair.substring(at + 1));
        }
        return pairs;
    }

    private static String text(String resource) {
        try (InputStream in = Objects.requireNonNull(Vectors.class.getResourceAsStream(resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
