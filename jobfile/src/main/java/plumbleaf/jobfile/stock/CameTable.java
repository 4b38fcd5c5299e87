package plumbleaf.jobfile.stock;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/** What came of one delivery, as the table of {@link OrderTables#receiving} with its last column written in; a row left empty has not come. */
public final class CameTable {
    private static final int MOST = 9_999_999;

    private CameTable() {}

    /** What came of a line. */
    public record Came(TakeoffLine line, int units) {}

    /** What came, or every row that is wrong. */
    public record Answer(List<Came> came, List<InputError> errors) {
        public Answer {
            came = List.copyOf(came);
            errors = List.copyOf(errors);
        }
    }

    /** Everything that is ordered and has not come yet. */
    public static List<Came> all(Takeoff takeoff, Taker job, Yard yard) {
        List<Came> all = new ArrayList<>();
        for (TakeoffLine line : ordered(takeoff)) {
            int missing = missing(line, job, yard);
            if (missing > 0) all.add(new Came(line, missing));
        }
        return all;
    }

    /** What is still to come of a line; none where more came than was ordered. */
    public static int missing(TakeoffLine line, Taker job, Yard yard) {
        return (int) Math.max(0, line.units() - yard.came(job, Delivered.of(line, 0)));
    }

    /** What of a line came for this job, in words; empty where nothing did. */
    public static String came(TakeoffLine line, Taker job, Yard yard) {
        long missing = missing(line, job, yard);
        if (line.units() == 0 || missing >= line.units()) return "";
        return missing == 0 ? "came" : line.units() - missing + " came, " + missing + " short";
    }

    public static List<TakeoffLine> ordered(Takeoff takeoff) {
        return takeoff.lines().stream().filter(line -> line.units() > 0).toList();
    }

    public static Answer read(String file, String text, Takeoff takeoff) {
        CsvTable<List<Came>> table = CsvTable.read(
                file, text, List.of("supplier", "item", "name", "came"), row -> came(row, ordered(takeoff)));
        return new Answer(table.rows().stream().flatMap(List::stream).toList(), table.errors());
    }

    private static List<Came> came(CsvRow row, List<TakeoffLine> ordered) {
        if (row.text("came").isBlank()) return List.of();
        double units = row.number("came", 0, MOST);
        if (units != Math.rint(units)) row.error("came", "this is not a whole number", "write a whole number");
        for (TakeoffLine line : ordered) {
            boolean same = line.item().equals(row.text("item"))
                    && line.sold().supplier().equals(row.text("supplier"))
                    && line.sold().name().equals(row.text("name"));
            if (same) return List.of(new Came(line, (int) Math.rint(units)));
        }
        row.error("item", "this is not on the order", "write the table anew: plumbleaf order JOB --receiving FILE");
        return List.of();
    }
}
