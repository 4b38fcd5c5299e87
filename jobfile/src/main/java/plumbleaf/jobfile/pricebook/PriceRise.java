package plumbleaf.jobfile.pricebook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plumbleaf.jobfile.table.CsvEdit;

/**
 * Materials dearer or cheaper by a share. A new price has as many places as the old one, halves away from zero.
 *
 * @param share added: 0.04 for 4 %
 * @param date the new prices hold from
 * @param supplier whose; empty for everyone's
 * @param item how its name starts; empty for every item
 */
public record PriceRise(BigDecimal share, LocalDate date, String why, String supplier, String item) {
    /** First line of a history. */
    public static final String HISTORY_HEAD = "date,item,supplier,unit,contents,was,now,why\n";

    /**
     * @param table the materials as they are now
     * @param history a line for each price that changed
     */
    public record Raised(String table, String history, int changed) {}

    /** On a table of materials that was read without an error. */
    public Raised on(String materials) {
        StringBuilder history = new StringBuilder();
        List<String> changed = new ArrayList<>();
        String table = CsvEdit.rows(materials, row -> {
            if (!concerns(row)) return row;
            String was = row.getOrDefault("price", "0");
            BigDecimal old = new BigDecimal(was);
            String now = old.multiply(BigDecimal.ONE.add(share))
                    .setScale(Math.max(2, old.scale()), RoundingMode.HALF_UP)
                    .toPlainString();
            history.append(CsvEdit.line(List.of(
                            date.toString(),
                            row.getOrDefault("item", ""),
                            row.getOrDefault("supplier", ""),
                            row.getOrDefault("unit", ""),
                            row.getOrDefault("contents", ""),
                            was,
                            now,
                            why)))
                    .append('\n');
            changed.add(now);
            row.put("price", now);
            row.put("date", date.toString());
            return row;
        });
        return new Raised(table, history.toString(), changed.size());
    }

    private boolean concerns(Map<String, String> row) {
        boolean his = supplier.isEmpty() || supplier.equals(row.get("supplier"));
        return his && row.getOrDefault("item", "").startsWith(item);
    }
}
