package plumbleaf.jobfile.catalogue;

import java.util.List;
import plumbleaf.engine.catalogue.FastenerFinish;
import plumbleaf.engine.catalogue.FastenerFit;
import plumbleaf.engine.catalogue.Screw;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/** The tables of board screws, and of which finish stands up in which wood. */
public final class FastenerTables {
    private FastenerTables() {}

    /** Short to long. */
    public static CsvTable<Screw> screws(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("id", "name", "diameter_in", "length_in", "finish", "source"),
                row -> new Screw(
                        row.needed("id"),
                        row.needed("name"),
                        Length.inches(row.number("diameter_in", 0.1, 0.5)),
                        Length.inches(row.number("length_in", 0.5, 12)),
                        finish(row)));
    }

    public static CsvTable<FastenerFit> fits(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("wood", "finish", "verdict", "why", "source"),
                row -> new FastenerFit(
                        row.needed("wood"), finish(row), verdict(row), row.needed("why"), row.needed("source")));
    }

    private static String verdict(CsvRow row) {
        String verdict = row.needed("verdict");
        if (!List.of("good", "fair", "bad").contains(verdict))
            row.error("verdict", "this is no verdict", "write good, fair or bad");
        return verdict;
    }

    private static FastenerFinish finish(CsvRow row) {
        for (FastenerFinish finish : FastenerFinish.values()) {
            if (finish.key().equals(row.text("finish"))) return finish;
        }
        row.error("finish", "this is no finish", "write stainless, hot-dip, plated or bare");
        return FastenerFinish.BARE;
    }
}
