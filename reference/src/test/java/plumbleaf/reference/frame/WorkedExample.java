package plumbleaf.reference.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;

/** One row of {@code frame-examples.csv}: printed values, each to be met within the row's tolerance, and none to be forgotten. */
final class WorkedExample {
    private final String id;
    private final Map<String, Double> expected = new LinkedHashMap<>();
    private final TreeSet<String> open = new TreeSet<>();
    private final double relative;
    private final double absolute;

    private WorkedExample(List<String> row) {
        this.id = row.get(0);
        for (String pair : row.get(3).split(";", -1)) {
            int equals = pair.indexOf('=');
            expected.put(pair.substring(0, equals), Double.parseDouble(pair.substring(equals + 1)));
        }
        open.addAll(expected.keySet());
        String tolerance = row.get(4);
        this.absolute = tolerance.startsWith("abs ") ? Double.parseDouble(tolerance.substring(4)) : 0;
        this.relative = tolerance.endsWith("%") ? Double.parseDouble(tolerance.replace("%", "")) / 100 : 0;
    }

    static WorkedExample of(String id) {
        for (List<String> row : rows()) if (row.get(0).equals(id)) return new WorkedExample(row);
        throw new IllegalArgumentException("No worked example " + id);
    }

    WorkedExample meets(String name, double actual) {
        double printed = Objects.requireNonNull(expected.get(name), name);
        open.remove(name);
        assertThat(actual)
                .as(id + " " + name)
                .isCloseTo(printed, within(Math.max(absolute, relative * Math.abs(printed))));
        return this;
    }

    /** A printed value that belongs to another theory than the frame's. */
    WorkedExample leavesOut(String name) {
        open.remove(name);
        return this;
    }

    void everyValueWasMet() {
        assertThat(open).as(id + " values not compared").isEmpty();
    }

    private static List<List<String>> rows() {
        try (InputStream in = WorkedExample.class.getResourceAsStream("frame-examples.csv")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            List<List<String>> rows = new ArrayList<>();
            for (String line : text.strip().split("\n", -1)) rows.add(cells(line));
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"') quoted = !quoted;
            else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else cell.append(c);
        }
        cells.add(cell.toString());
        return cells;
    }
}
