package plumbleaf.jobfile.table;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.input.Nearest;

/**
 * A table read row by row into records. Lines that start with # are remarks; the apostrophe of {@link SafeCsv} is taken off. A row with a
 * bad cell is named and left out; the rest is read.
 *
 * @param <T> what a row becomes
 */
public final class CsvTable<T> {
    private final List<T> rows;
    private final List<InputError> errors;

    private CsvTable(List<T> rows, List<InputError> errors) {
        this.rows = List.copyOf(rows);
        this.errors = List.copyOf(errors);
    }

    /**
     * @param file as it is named in errors
     * @param columns the headings that must be there; others are allowed and ignored
     * @param row makes a record of a row, asking for cells by their heading
     */
    public static <T> CsvTable<T> read(String file, String text, List<String> columns, Function<CsvRow, T> row) {
        List<CsvLines.Line> lines = CsvLines.of(text);
        List<InputError> errors = new ArrayList<>();
        if (lines.isEmpty()) {
            errors.add(InputError.ofFile(
                    file, "the table is empty", "start it with the headings " + String.join(",", columns)));
            return new CsvTable<>(List.of(), errors);
        }
        List<String> headings = lines.get(0).cells();
        headingErrors(file, lines.get(0), columns, errors);
        if (!errors.isEmpty()) return new CsvTable<>(List.of(), errors);
        List<T> rows = new ArrayList<>();
        for (CsvLines.Line line : lines.subList(1, lines.size())) {
            if (!line.closed() || line.cells().size() != headings.size()) {
                errors.add(shape(file, line, headings.size()));
                continue;
            }
            CsvRow cells = new CsvRow(
                    file,
                    line.number(),
                    headings,
                    line.cells().stream().map(SafeCsv::armed).toList());
            T made = row.apply(cells);
            if (cells.errors().isEmpty()) rows.add(made);
            errors.addAll(cells.errors());
        }
        return new CsvTable<>(rows, errors);
    }

    private static void headingErrors(
            String file, CsvLines.Line heading, List<String> columns, List<InputError> errors) {
        Set<String> seen = new LinkedHashSet<>();
        for (String name : heading.cells()) {
            if (!seen.add(name))
                errors.add(new InputError(
                        file, heading.number(), 0, name, "", "this heading is there twice", "keep one of them"));
        }
        for (String column : columns) {
            if (seen.contains(column)) continue;
            String cure = Nearest.to(column, seen)
                    .map(near -> "\"" + near + "\" may be it")
                    .orElse("add the column");
            errors.add(new InputError(file, heading.number(), 0, column, "", "this heading is missing", cure));
        }
    }

    private static InputError shape(String file, CsvLines.Line line, int wanted) {
        if (!line.closed())
            return new InputError(file, line.number(), 0, "", "", "a quote is opened and never closed", "close it");
        return new InputError(
                file,
                line.number(),
                0,
                "",
                "",
                "this row has " + line.cells().size() + " cells, and the heading " + wanted,
                "put text that holds a comma in quotes");
    }

    /** The good rows, in order. */
    public List<T> rows() {
        return rows;
    }

    /** What is wrong with the others. */
    public List<InputError> errors() {
        return errors;
    }
}
