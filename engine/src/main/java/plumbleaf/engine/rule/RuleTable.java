package plumbleaf.engine.rule;

import java.util.List;
import plumbleaf.engine.quantity.DisplayUnits;

/**
 * The limits that come with the program, by id.
 *
 * @param display units that findings tell lengths in
 */
public record RuleTable(List<RuleRow> rows, DisplayUnits display) {
    public RuleTable {
        rows = List.copyOf(rows);
    }

    public RuleTable(List<RuleRow> rows) {
        this(rows, DisplayUnits.US);
    }

    /** The same limits, told in other units. */
    public RuleTable shownIn(DisplayUnits units) {
        return new RuleTable(rows, units);
    }

    RuleFinding say() {
        return new RuleFinding(display);
    }

    /** Every row about one thing, as the table has them. */
    public List<RuleRow> about(String topic) {
        return rows.stream().filter(row -> row.topic().equals(topic)).toList();
    }

    public RuleRow row(String id) {
        for (RuleRow row : rows) {
            if (row.id().equals(id)) return row;
        }
        throw new IllegalArgumentException("No rule " + id + " in the table");
    }
}
