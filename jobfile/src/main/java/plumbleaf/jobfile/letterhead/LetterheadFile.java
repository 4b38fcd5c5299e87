package plumbleaf.jobfile.letterhead;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.table.CsvTable;

/**
 * Reads {@code letterhead.csv}: two columns, {@code what} and {@code words}. What may be there is named here; a name must be.
 *
 * @param lines  of the letterhead: name, then address, phone, license and other lines in the order of the file
 * @param mark   file of the own mark, beside this one; empty for none
 * @param paper  size of pages of text; empty where it is not said
 * @param sheets size of sheets of drawings; empty where it is not said
 */
public record LetterheadFile(List<String> lines, String mark, String paper, String sheets, List<InputError> errors) {
    public static final List<String> PAPERS = List.of("letter", "a4");
    public static final List<String> SHEETS = List.of("letter", "tabloid", "a4", "a3");

    private static final List<String> KNOWN =
            List.of("name", "address", "phone", "license", "line", "mark", "paper", "sheets");
    private static final int LONGEST = 120;

    public LetterheadFile {
        lines = List.copyOf(lines);
        errors = List.copyOf(errors);
    }

    private record Row(String what, String words) {}

    public static LetterheadFile read(String file, String text) {
        CsvTable<Row> table = CsvTable.read(file, text, List.of("what", "words"), cells -> {
            String what = cells.oneOf("what", KNOWN);
            String words = cells.needed("words");
            if (words.length() > LONGEST) cells.error("words", "this is longer than 120 letters", "shorten it");
            if (what.equals("paper")) cells.oneOf("words", PAPERS);
            if (what.equals("sheets")) cells.oneOf("words", SHEETS);
            return new Row(what, words);
        });
        List<InputError> errors = new ArrayList<>(table.errors());
        if (errors.isEmpty() && first(table.rows(), "name").isEmpty())
            errors.add(InputError.ofFile(file, "there is no name", "add a row: name,\"Your company\""));
        List<String> lines = new ArrayList<>();
        lines.add(first(table.rows(), "name"));
        for (Row row : table.rows()) {
            if (row.what.equals("license")) lines.add("License " + row.words);
            else if (List.of("address", "phone", "line").contains(row.what)) lines.add(row.words);
        }
        return new LetterheadFile(
                lines,
                first(table.rows(), "mark"),
                first(table.rows(), "paper"),
                first(table.rows(), "sheets"),
                errors);
    }

    private static String first(List<Row> rows, String what) {
        return rows.stream()
                .filter(row -> row.what.equals(what))
                .map(Row::words)
                .findFirst()
                .orElse("");
    }
}
