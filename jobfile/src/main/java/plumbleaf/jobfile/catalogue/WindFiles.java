package plumbleaf.jobfile.catalogue;

import java.util.List;
import plumbleaf.engine.job.Exposure;
import plumbleaf.engine.job.WindEdition;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.wind.EndStrip;
import plumbleaf.engine.wind.ExposureRow;
import plumbleaf.engine.wind.OpenRow;
import plumbleaf.engine.wind.ReturnRow;
import plumbleaf.engine.wind.WallCell;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/** The tables of the wind standard: terrain, walls, strips from a free end, return corners, open screens. */
public final class WindFiles {
    /** Stands in the table for the far end of the wall. */
    private static final double FAR_END = 999;

    private WindFiles() {}

    public static CsvTable<ExposureRow> exposures(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("edition", "exposure", "factor", "alpha", "zg_ft"),
                row -> new ExposureRow(
                        edition(row),
                        exposure(row),
                        row.number("factor", 1, 4),
                        row.number("alpha", 3, 20),
                        Length.feet(row.number("zg_ft", 100, 10_000))));
    }

    public static CsvTable<WallCell> wall(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("s_over_h", "b_over_s", "cf"),
                row -> new WallCell(
                        row.number("s_over_h", 0.01, 1), row.number("b_over_s", 0.01, 100), row.number("cf", 0.1, 6)));
    }

    public static CsvTable<EndStrip> ends(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("b_over_s", "from_s", "to_s", "cf"),
                row -> new EndStrip(
                        row.number("b_over_s", 1, 100),
                        row.number("from_s", 0, 99),
                        farEnd(row.number("to_s", 1, FAR_END)),
                        row.number("cf", 0.1, 6)));
    }

    /** The last strip of a row goes on to the far end, however long the wall is: a mile of 5 ft fence is a thousand heights. */
    private static double farEnd(double to) {
        return to == FAR_END ? Double.POSITIVE_INFINITY : to;
    }

    public static CsvTable<ReturnRow> returns(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("lr_over_s", "factor"),
                row -> new ReturnRow(row.number("lr_over_s", 0, 10), row.number("factor", 0.1, 1)));
    }

    public static CsvTable<OpenRow> open(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("solid_from", "solid_below", "flat", "round_small", "round_large"),
                row -> new OpenRow(
                        row.number("solid_from", 0, 1),
                        row.number("solid_below", 0, 1),
                        row.number("flat", 0.1, 4),
                        row.number("round_small", 0.1, 4),
                        row.number("round_large", 0.1, 4)));
    }

    private static WindEdition edition(CsvRow row) {
        for (WindEdition edition : WindEdition.values()) {
            if (edition.key().equals(row.text("edition"))) return edition;
        }
        row.error("edition", "this edition is not known", "write 7-16 or 7-22");
        return WindEdition.ASCE_7_16;
    }

    private static Exposure exposure(CsvRow row) {
        for (Exposure exposure : Exposure.values()) {
            if (exposure.key().equals(row.text("exposure"))) return exposure;
        }
        row.error("exposure", "this is no exposure", "write B, C or D");
        return Exposure.C;
    }
}
