package plumbleaf.jobfile.cutlist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/**
 * The table of a cut list: a row for each kind of piece, bar and offcut, lengths as people write them.
 *
 * <p>{@code what} (piece, bar, offcut), {@code length} (of a piece from long point to long point) and {@code count} must be there; a bar
 * without a count is bought as needed. {@code price} is what one bar costs, {@code mark} what a piece is called. Slanted ends: {@code first_deg}
 * and {@code second_deg} from square, {@code ends} parallel or opposed, and {@code depth}, the section's size in the plane of the cut, where
 * two pieces may share one.
 */
public final class CutListFile {
    private static final List<String> COLUMNS = List.of("what", "length", "count");
    private static final List<String> KINDS = List.of("piece", "bar", "offcut");
    private static final List<String> ENDS = List.of("parallel", "opposed");
    private static final int MOST = 100_000;
    /** Steeper, no saw of the trade cuts a tube's end. Common practice, no source. */
    private static final double STEEPEST_DEG = 75;

    private final String name;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<StockBar> bars = new ArrayList<>();
    /** How many pieces of each mark there are so far. */
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    private int rows;
    private long wanted;

    private CutListFile(String name) {
        this.name = name;
    }

    /**
     * A cut list, or what is wrong with its table.
     *
     * @param list without the bad rows
     */
    public record Answer(CutList list, List<InputError> errors) {
        public Answer {
            errors = List.copyOf(errors);
        }
    }

    /** @param file as it is named in errors and over the plan */
    public static Answer read(String file, String text) {
        return read(file, text, List.of());
    }

    /** @param more bars that can be had beside those of the table */
    public static Answer read(String file, String text, List<StockBar> more) {
        CutListFile reading = new CutListFile(file);
        reading.bars.addAll(more);
        List<InputError> errors =
                new ArrayList<>(CsvTable.read(file, text, COLUMNS, reading::row).errors());
        if (errors.isEmpty()) reading.checkWhole(errors);
        return new Answer(new CutList(file, reading.pieces, reading.bars), errors);
    }

    /** Adds what the row says; answers its number. */
    private int row(CsvRow row) {
        rows++;
        String what = row.oneOf("what", KINDS);
        Length length = row.read("length", LengthText::length, Length.inches(1));
        if (length.isZero()) row.error("length", "nothing is this short", "write it like 6' 2\"");
        long nm = Math.max(1, length.nanometres());
        if (what.equals("piece")) pieces(row, nm);
        else if (KINDS.contains(what)) bar(row, nm, what.equals("offcut"));
        return rows;
    }

    private void pieces(CsvRow row, long nm) {
        int count = (int) count(row);
        Angle first = angle(row, "first_deg");
        Angle second = angle(row, "second_deg");
        Piece.Ends ends = Piece.Ends.PARALLEL;
        boolean saysEnds = row.has("ends") && !row.text("ends").isEmpty();
        if (saysEnds && row.oneOf("ends", ENDS).equals("opposed")) ends = Piece.Ends.OPPOSED;
        boolean slanted = first.radians() != 0 || second.radians() != 0;
        if (first.radians() != 0 && second.radians() != 0 && !saysEnds)
            row.error(
                    row.has("ends") ? "ends" : "second_deg",
                    "two slanted ends lie one way or the other",
                    "write parallel or opposed in the column ends");
        long across = slanted ? across(row, nm, Math.max(first.radians(), second.radians())) : 0;
        String mark = mark(row);
        wanted += count;
        if (wanted > MOST) return;
        for (int i = 0; i < count; i++) {
            int number = numbers.merge(mark, 1, Integer::sum);
            pieces.add(new Piece(CutList.piece(mark, number), mark, nm, first, second, ends, across));
        }
    }

    private static long across(CsvRow row, long nm, double steepest) {
        if (!row.has("depth") || row.text("depth").isEmpty()) return 0;
        Length depth = row.read("depth", LengthText::length, Length.ZERO);
        boolean fits =
                depth.inches() * Math.tan(steepest) < Length.nanometres(nm).inches();
        if (!fits)
            row.error("depth", "a slant of this depth is longer than the piece", "check depth, angle and length");
        return depth.nanometres();
    }

    private static Angle angle(CsvRow row, String column) {
        return row.has(column) ? Angle.degrees(row.numberOr(column, 0, 0, STEEPEST_DEG)) : Angle.ZERO;
    }

    private String mark(CsvRow row) {
        String mark = row.has("mark") ? row.text("mark") : "";
        return mark.isEmpty() ? "row " + rows : mark;
    }

    private void bar(CsvRow row, long nm, boolean offcut) {
        boolean asMany = row.text("count").isEmpty();
        int count = asMany ? 1 : (int) count(row);
        Supply supply = asMany && !offcut ? Supply.asMany() : Supply.atMost(count);
        boolean priced = row.has("price") && !row.text("price").isEmpty();
        if (!priced && !offcut)
            row.error("price", "a bar has its price", "write what one costs in dollars, or 1 to count bars");
        Money price = priced ? Money.rounded(row.decimal("price")) : Money.ZERO;
        bars.add(new StockBar("row " + rows + " of the list", nm, price, supply, offcut));
    }

    private static double count(CsvRow row) {
        double count = row.number("count", 1, MOST);
        if (count != Math.rint(count)) row.error("count", "this is not a whole number", "write a whole number");
        return Math.rint(count);
    }

    private void checkWhole(List<InputError> errors) {
        if (wanted == 0) errors.add(InputError.ofFile(name, "there is no piece in it", "add a row for each kind"));
        if (bars.isEmpty())
            errors.add(InputError.ofFile(name, "there is no bar in it", "add a row bar with its length and price"));
        if (wanted > MOST)
            errors.add(InputError.ofFile(
                    name, "there are " + wanted + " pieces in it", "split it: " + MOST + " is the most"));
    }
}
