package plumbleaf.jobfile.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.jobfile.input.InputError;

/**
 * The cells of one row by their heading. A bad cell is noted and answered with a stand-in within its range, so that all bad cells of a row are
 * found at once; a row with any is never used.
 */
public final class CsvRow {
    private static final BigDecimal MOST = BigDecimal.valueOf(10_000_000);
    private static final Pattern NUMBER = Pattern.compile("-?(\\d+(\\.\\d*)?|\\.\\d+)([eE]-?\\d{1,2})?");

    private final String file;
    private final int line;
    private final List<String> headings;
    private final List<String> cells;
    private final List<InputError> errors = new ArrayList<>();

    CsvRow(String file, int line, List<String> headings, List<String> cells) {
        this.file = file;
        this.line = line;
        this.headings = headings;
        this.cells = cells;
    }

    /** A cell as it stands; may be empty. */
    public String text(String column) {
        int at = headings.indexOf(column);
        if (at < 0) throw new IllegalArgumentException("No column " + column + " in " + file);
        return cells.get(at);
    }

    /** Whether the table has this column. */
    public boolean has(String column) {
        return headings.contains(column);
    }

    /** A cell that must not be empty. */
    public String needed(String column) {
        String text = text(column);
        if (text.isEmpty()) error(column, "this cell is empty", "fill it in");
        return text.isEmpty() ? "-" : text;
    }

    /** A number within a range. */
    public double number(String column, double least, double most) {
        String text = text(column);
        if (!NUMBER.matcher(text).matches()) {
            error(column, "this is not a number", "write a plain number, like 2.375");
            return least;
        }
        double value = Double.parseDouble(text);
        if (value >= least && value <= most) return value;
        error(
                column,
                "this is not between " + DecimalText.shortest(least) + " and " + DecimalText.shortest(most),
                "check the number and its unit");
        return least;
    }

    /** A number, or this one where the cell is empty. */
    public double numberOr(String column, double instead, double least, double most) {
        return text(column).isEmpty() ? instead : number(column, least, most);
    }

    /** An exact number of zero or more. */
    public BigDecimal decimal(String column) {
        BigDecimal value = new BigDecimal(NUMBER.matcher(text(column)).matches() ? exact(column) : wrong(column));
        if (value.compareTo(MOST) <= 0) return value;
        error(column, "this is more than anything costs", "write at most 10000000");
        return BigDecimal.ZERO;
    }

    private String exact(String column) {
        String text = text(column);
        return text.startsWith("-") ? wrong(column) : text;
    }

    private String wrong(String column) {
        error(column, "this is not a number of zero or more", "write a plain number, like 12.40");
        return "0";
    }

    /** A yes or a no. */
    public boolean yes(String column) {
        String text = text(column);
        if (!text.equals("yes") && !text.equals("no")) error(column, "this is neither yes nor no", "write yes or no");
        return text.equals("yes");
    }

    /** One of a few words. */
    public String oneOf(String column, List<String> words) {
        String text = text(column);
        if (!words.contains(text))
            error(column, "this is none of " + String.join(", ", words), "write " + String.join(" or ", words));
        return text;
    }

    /** A cell read by a rule of its own; {@code standIn} is only answered along with an error. */
    public <T> T read(String column, Function<String, Parsed<T>> rule, T standIn) {
        return rule.apply(text(column)).match(read -> read.is(), refused -> {
            error(column, refused.problem(), refused.cure());
            return standIn;
        });
    }

    /** Notes something wrong with a cell. */
    public void error(String column, String problem, String cure) {
        errors.add(new InputError(
                file, line, headings.indexOf(column) + 1, column, has(column) ? text(column) : "", problem, cure));
    }

    List<InputError> errors() {
        return List.copyOf(errors);
    }
}
