package plumbleaf.jobfile.catalogue;

import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.rule.RuleRow;
import plumbleaf.engine.rule.RuleTable;
import plumbleaf.jobfile.table.CsvTable;

/** The table of limits on barriers, access and permits. */
public final class RuleFiles {
    private RuleFiles() {}

    public static CsvTable<RuleRow> rules(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("id", "topic", "what", "limit_in", "clause", "source", "confidence"),
                row -> new RuleRow(
                        row.needed("id"),
                        row.needed("topic"),
                        row.needed("what"),
                        Length.inches(row.number("limit_in", 0.1, 500)),
                        row.needed("clause"),
                        row.needed("source"),
                        row.needed("confidence")));
    }

    /** The limits that come with the program. */
    public static RuleTable standard() {
        return new RuleTable(
                StandardCatalogue.table("rules.csv", RuleFiles::rules).rows());
    }
}
