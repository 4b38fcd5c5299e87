package plumbleaf.jobfile.catalogue;

import java.util.List;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodGrade;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/** The tables of steel sections and woods. Inches, ksi for steel, psi for wood, pounds per foot. */
public final class MaterialTables {
    private MaterialTables() {}

    public static CsvTable<Section> sections(String file, String text) {
        List<String> columns = List.of(
                "id",
                "family",
                "name",
                "shape",
                "depth_in",
                "width_in",
                "wall_nominal_in",
                "wall_used_in",
                "wall_design_in",
                "weight_lb_per_ft",
                "area_in2",
                "ix_in4",
                "sx_in3",
                "zx_in3",
                "iy_in4",
                "sy_in3",
                "zy_in3",
                "j_in4",
                "fy_ksi",
                "fu_ksi",
                "fy_confidence",
                "source",
                "confidence");
        return CsvTable.read(file, text, columns, MaterialTables::section);
    }

    private static Section section(CsvRow row) {
        Length nominal = inches(row, "wall_nominal_in", 0.02, 2);
        Length design = inches(row, "wall_design_in", 0.02, 2);
        if (design.compareTo(nominal) > 0) {
            row.error("wall_design_in", "the design wall is thicker than the nominal one", "write 0.93 of the nominal");
            design = nominal;
        }
        return new Section(
                row.needed("id"),
                row.needed("family"),
                row.needed("name"),
                shape(row),
                inches(row, "depth_in", 0.5, 24),
                inches(row, "width_in", 0.5, 24),
                nominal,
                inches(row, "wall_used_in", 0.02, 2),
                design,
                Force.pounds(row.number("weight_lb_per_ft", 0.1, 500)),
                row.number("area_in2", 0.01, 200),
                row.number("ix_in4", 0.001, 10_000),
                row.number("sx_in3", 0.001, 2_000),
                row.number("zx_in3", 0.001, 2_000),
                row.number("iy_in4", 0.001, 10_000),
                row.number("sy_in3", 0.001, 2_000),
                row.number("zy_in3", 0.001, 2_000),
                row.number("j_in4", 0.001, 20_000),
                Stress.ksi(row.number("fy_ksi", 10, 120)),
                Stress.ksi(row.number("fu_ksi", 20, 150)),
                row.needed("fy_confidence"),
                row.needed("source"),
                row.needed("confidence"));
    }

    private static Shape shape(CsvRow row) {
        for (Shape shape : Shape.values()) {
            if (shape.key().equals(row.text("shape"))) return shape;
        }
        row.error("shape", "this is no shape", "write round, square or rectangular");
        return Shape.ROUND;
    }

    public static CsvTable<WoodSpecies> species(String file, String text) {
        List<String> columns = List.of(
                "id",
                "name",
                "g_oven_dry",
                "fsp_pct",
                "tangential_pct",
                "radial_pct",
                "ct_per_pct",
                "grade",
                "fb_psi",
                "ft_psi",
                "fv_psi",
                "fc_perp_psi",
                "fc_psi",
                "e_psi",
                "emin_psi",
                "size_specific",
                "source",
                "confidence");
        return CsvTable.read(
                file,
                text,
                columns,
                row -> new WoodSpecies(
                        row.needed("id"),
                        row.needed("name"),
                        row.number("g_oven_dry", 0.2, 1.2),
                        Moisture.percent(row.number("fsp_pct", 15, 40)),
                        row.number("tangential_pct", 1, 15),
                        row.number("radial_pct", 0.5, 12),
                        row.number("ct_per_pct", 0.0003, 0.006),
                        grade(row),
                        row.needed("source"),
                        row.needed("confidence")));
    }

    private static WoodGrade grade(CsvRow row) {
        return new WoodGrade(
                row.needed("grade"),
                Stress.psi(row.number("fb_psi", 100, 4_000)),
                Stress.psi(row.number("ft_psi", 50, 4_000)),
                Stress.psi(row.number("fv_psi", 30, 500)),
                Stress.psi(row.number("fc_perp_psi", 100, 2_000)),
                Stress.psi(row.number("fc_psi", 100, 4_000)),
                Stress.psi(row.number("e_psi", 300_000, 3_000_000)),
                Stress.psi(row.number("emin_psi", 100_000, 1_500_000)),
                row.yes("size_specific"));
    }

    private static Length inches(CsvRow row, String column, double least, double most) {
        return Length.inches(row.number(column, least, most));
    }
}
