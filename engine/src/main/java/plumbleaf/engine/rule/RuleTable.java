package plumbleaf.engine.rule;

import java.util.List;

/** The limits that come with the program, by id. */
public record RuleTable(List<RuleRow> rows) {
    public RuleTable {
        rows = List.copyOf(rows);
    }

    public RuleRow row(String id) {
        for (RuleRow row : rows) {
            if (row.id().equals(id)) return row;
        }
        throw new IllegalArgumentException("No rule " + id + " in the table");
    }
}
