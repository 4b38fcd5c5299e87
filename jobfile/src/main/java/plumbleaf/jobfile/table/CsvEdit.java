package plumbleaf.jobfile.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Changes rows of a table and leaves everything else as it stands: remarks, empty lines, the order of rows. A row is one line. */
public final class CsvEdit {
    private CsvEdit() {}

    /**
     * @param change gives a row's cells by column as they are to be; the same map where nothing changes
     */
    public static String rows(String text, UnaryOperator<Map<String, String>> change) {
        StringBuilder out = new StringBuilder();
        List<String> columns = List.of();
        for (String line : text.split("\n", -1)) {
            String bare = line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
            if (out.length() > 0) out.append('\n');
            List<CsvLines.Line> read = CsvLines.of(bare);
            if (read.isEmpty()) {
                out.append(line);
            } else if (columns.isEmpty()) {
                columns = read.get(0).cells();
                out.append(line);
            } else {
                out.append(row(bare, read.get(0).cells(), columns, change));
            }
        }
        return out.toString();
    }

    private static String row(
            String line, List<String> cells, List<String> columns, UnaryOperator<Map<String, String>> change) {
        Map<String, String> before = new LinkedHashMap<>();
        for (int i = 0; i < Math.min(cells.size(), columns.size()); i++) before.put(columns.get(i), cells.get(i));
        Map<String, String> after = change.apply(new LinkedHashMap<>(before));
        return after.equals(before) ? line : line(new ArrayList<>(after.values()));
    }

    /** Cells as one line, quoted where they must be; a word that a spreadsheet would take for a formula is disarmed. */
    public static String line(List<String> cells) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            if (i > 0) out.append(',');
            String cell = SafeCsv.disarmed(cells.get(i).replace('\n', ' ').replace('\r', ' '));
            boolean quoted = cell.indexOf(',') >= 0 || cell.indexOf('"') >= 0;
            out.append(quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
        }
        return out.toString();
    }
}
