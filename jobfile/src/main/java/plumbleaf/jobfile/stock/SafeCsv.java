package plumbleaf.jobfile.stock;

import java.util.List;
import java.util.regex.Pattern;
import plumbleaf.jobfile.table.CsvEdit;

/** Tables that people open in a spreadsheet: a word that begins like a formula gets an apostrophe before it, a number stays a number. */
final class SafeCsv {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private final StringBuilder text = new StringBuilder();

    SafeCsv remark(String words) {
        text.append("# ").append(words).append('\n');
        return this;
    }

    SafeCsv row(String... cells) {
        return row(List.of(cells));
    }

    SafeCsv row(List<String> cells) {
        text.append(CsvEdit.line(cells.stream().map(SafeCsv::disarmed).toList()))
                .append('\n');
        return this;
    }

    String text() {
        return text.toString();
    }

    static String disarmed(String cell) {
        String flat = cell.replace('\n', ' ').replace('\r', ' ');
        if (flat.isEmpty() || NUMBER.matcher(flat).matches()) return flat;
        return FORMULA_STARTS.indexOf(flat.charAt(0)) >= 0 ? "'" + flat : flat;
    }

    /** As it was before it was disarmed. */
    static String armed(String cell) {
        boolean disarmed = cell.length() > 1 && cell.charAt(0) == '\'' && FORMULA_STARTS.indexOf(cell.charAt(1)) >= 0;
        return disarmed ? cell.substring(1) : cell;
    }
}
