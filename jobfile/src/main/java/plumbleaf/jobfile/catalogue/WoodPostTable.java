package plumbleaf.jobfile.catalogue;

import java.util.List;
import plumbleaf.engine.material.WoodGrade;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.WoodPost;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/** The table of sawn posts. Dressed sizes in inches, reference design values in psi. */
public final class WoodPostTable {
    private WoodPostTable() {}

    /** @param species what the column of that name may name */
    public static CsvTable<WoodPost> read(String file, String text, List<WoodSpecies> species) {
        List<String> columns = List.of(
                "id",
                "name",
                "round",
                "depth_in",
                "width_in",
                "species",
                "grade",
                "fb_psi",
                "ft_psi",
                "fv_psi",
                "fc_perp_psi",
                "fc_psi",
                "e_psi",
                "emin_psi",
                "size_specific",
                "timber",
                "incised",
                "source",
                "confidence");
        return CsvTable.read(file, text, columns, row -> post(row, species));
    }

    private static WoodPost post(CsvRow row, List<WoodSpecies> species) {
        WoodSpecies wood = species.get(0);
        boolean known = false;
        for (WoodSpecies each : species) {
            if (!each.id().equals(row.text("species"))) continue;
            wood = each;
            known = true;
        }
        if (!known) row.error("species", "there is no such wood", "write the id of a row of species.csv");
        boolean round = row.yes("round");
        Length depth = Length.inches(row.number("depth_in", 1.5, 16));
        Length width = Length.inches(row.number("width_in", 1.5, 16));
        if (round && !depth.equals(width))
            row.error("width_in", "a pole is as wide as it is deep", "write its diameter in both columns");
        return new WoodPost(
                row.needed("id"),
                row.needed("name"),
                round,
                depth,
                round ? depth : width,
                wood,
                new WoodGrade(
                        row.needed("grade"),
                        Stress.psi(row.number("fb_psi", 100, 4_000)),
                        Stress.psi(row.number("ft_psi", 50, 4_000)),
                        Stress.psi(row.number("fv_psi", 30, 500)),
                        Stress.psi(row.number("fc_perp_psi", 100, 2_000)),
                        Stress.psi(row.number("fc_psi", 100, 4_000)),
                        Stress.psi(row.number("e_psi", 300_000, 3_000_000)),
                        Stress.psi(row.number("emin_psi", 100_000, 1_500_000)),
                        row.yes("size_specific")),
                row.yes("timber"),
                row.yes("incised"),
                row.needed("source"),
                row.needed("confidence"));
    }
}
