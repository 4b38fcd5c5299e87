package plumbleaf.jobfile.pricebook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.jobfile.table.CsvEdit;

/**
 * One table of a book dearer or cheaper by a share. A new price has as many places as the old one, halves away from zero.
 *
 * @param of what gets dearer
 * @param share added: 0.04 for 4 %
 * @param date the new prices hold from
 * @param supplier whose; empty for everyone's, and for what has none
 * @param item how its name starts; empty for every item
 */
public record PriceRise(Of of, BigDecimal share, LocalDate date, String why, String supplier, String item) {
    /** What of a book can be raised: the table it stands in, and the columns with its price, its name and what it is counted by. */
    public enum Of {
        MATERIALS("materials", "materials.csv", "price", "item", "unit"),
        CHARGES("charges", "charges.csv", "price", "id", "per"),
        WAGE("wage", "house.csv", "hourly", "", "");

        private final String key;
        private final String table;
        private final String price;
        private final String name;
        private final String unit;

        Of(String key, String table, String price, String name, String unit) {
            this.key = key;
            this.table = table;
            this.price = price;
            this.name = name;
            this.unit = unit;
        }

        public String key() {
            return key;
        }

        /** File of the table. */
        public String table() {
            return table;
        }

        public static Optional<Of> of(String key) {
            for (Of of : values()) if (of.key.equals(key)) return Optional.of(of);
            return Optional.empty();
        }
    }

    /** First line of a history. */
    public static final String HISTORY_HEAD = "date,item,supplier,unit,contents,was,now,why\n";

    /**
     * @param table as it is now
     * @param history a line for each price that changed
     */
    public record Raised(String table, String history, int changed) {}

    /** On its table, which was read without an error. */
    public Raised on(String before) {
        StringBuilder history = new StringBuilder();
        List<String> changed = new ArrayList<>();
        String table = CsvEdit.rows(before, row -> {
            if (!concerns(row)) return row;
            String was = row.getOrDefault(of.price, "0");
            BigDecimal old = new BigDecimal(was);
            String now = old.multiply(BigDecimal.ONE.add(share))
                    .setScale(Math.max(2, old.scale()), RoundingMode.HALF_UP)
                    .toPlainString();
            history.append(CsvEdit.line(List.of(
                            date.toString(),
                            of == Of.WAGE ? of.price : row.getOrDefault(of.name, ""),
                            row.getOrDefault("supplier", ""),
                            row.getOrDefault(of.unit, ""),
                            row.getOrDefault("contents", ""),
                            was,
                            now,
                            why)))
                    .append('\n');
            changed.add(now);
            row.put(of.price, now);
            row.replace("date", date.toString());
            return row;
        });
        return new Raised(table, history.toString(), changed.size());
    }

    private boolean concerns(Map<String, String> row) {
        boolean his = supplier.isEmpty() || supplier.equals(row.get("supplier"));
        return his && row.getOrDefault(of.name, "").startsWith(item);
    }
}
