package plumbleaf.jobfile.table;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Tables that people open in a spreadsheet: a word that begins like a formula gets an apostrophe before it, a number stays a number.
 * Whatever reads a table through {@link CsvTable} gets the word without the apostrophe.
 */
public final class SafeCsv {
    private static final Pattern NUMBER = Pattern.compile("-?(\\d+(\\.\\d*)?|\\.\\d+)");
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private final StringBuilder text = new StringBuilder();

    public SafeCsv remark(String words) {
        text.append("# ").append(words).append('\n');
        return this;
    }

    public SafeCsv row(String... cells) {
        return row(List.of(cells));
    }

    public SafeCsv row(List<String> cells) {
        text.append(CsvEdit.line(cells)).append('\n');
        return this;
    }

    public String text() {
        return text.toString();
    }

    static String disarmed(String cell) {
        return isFormula(cell) ? "'" + cell : cell;
    }

    /** As it was before it was disarmed. */
    static String armed(String cell) {
        boolean disarmed = cell.length() > 1 && cell.charAt(0) == '\'' && FORMULA_STARTS.indexOf(cell.charAt(1)) >= 0;
        return disarmed ? cell.substring(1) : cell;
    }

    private static boolean isFormula(String cell) {
        String bare = cell.strip();
        boolean steers = !cell.isEmpty() && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0;
        boolean starts = !bare.isEmpty() && FORMULA_STARTS.indexOf(bare.charAt(0)) >= 0;
        return (steers || starts) && !NUMBER.matcher(bare).matches();
    }

    /** A whole table that somebody else wrote, as it may leave the house: its cells disarmed, all else as it stands, remarks too. */
    public static String leaving(String table) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        while (at < table.length()) {
            int end = cellEnd(table, at);
            String cell = table.substring(at, end);
            int open = cell.startsWith("\"") ? 1 : 0;
            boolean formula = isFormula(cell.substring(open).replace("\"", ""));
            out.append(cell, 0, open).append(formula ? "'" : "").append(cell, open, cell.length());
            if (end < table.length()) out.append(table.charAt(end));
            at = end + 1;
        }
        return out.toString();
    }

    /** Where the cell that begins here ends: at the next comma or line end outside quotes. */
    private static int cellEnd(String table, int from) {
        int at = from;
        boolean quoted = false;
        while (at < table.length()) {
            char c = table.charAt(at);
            if (c == '"' && (quoted || at == from)) quoted = !quoted;
            if (!quoted && ends(c)) return at;
            at++;
        }
        // A quote that is never closed hides nothing: the cell then ends where it would without it.
        return quoted ? plainEnd(table, from) : at;
    }

    private static int plainEnd(String table, int from) {
        int at = from;
        while (at < table.length() && !ends(table.charAt(at))) at++;
        return at;
    }

    private static boolean ends(char c) {
        return c == ',' || c == '\n' || c == '\r';
    }
}
