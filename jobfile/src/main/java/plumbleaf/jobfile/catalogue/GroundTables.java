package plumbleaf.jobfile.catalogue;

import java.util.List;
import plumbleaf.engine.footing.ClayFeel;
import plumbleaf.engine.footing.PresumedSoil;
import plumbleaf.engine.footing.SandFeel;
import plumbleaf.engine.job.SoilState;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Density;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/** The tables of what is presumed of soils: by class, and by how they feel. */
public final class GroundTables {
    private GroundTables() {}

    public static CsvTable<PresumedSoil> classes(String file, String text) {
        List<String> columns = List.of(
                "class",
                "name",
                "bearing_psf",
                "lateral_psf_per_ft",
                "friction",
                "cohesion_psf",
                "source",
                "confidence");
        return CsvTable.read(
                file,
                text,
                columns,
                row -> new PresumedSoil(
                        (int) row.number("class", 1, 5),
                        row.needed("name"),
                        Pressure.psf(row.number("bearing_psf", 100, 50_000)),
                        Pressure.psf(row.number("lateral_psf_per_ft", 10, 5_000)),
                        row.number("friction", 0, 1),
                        Pressure.psf(row.number("cohesion_psf", 0, 2_000)),
                        row.needed("source"),
                        row.needed("confidence")));
    }

    public static CsvTable<SandFeel> sands(String file, String text) {
        List<String> columns =
                List.of("state", "nh_lb_per_in3", "nh_below_water_lb_per_in3", "friction_deg", "weight_pcf", "source");
        return CsvTable.read(
                file,
                text,
                columns,
                row -> new SandFeel(
                        state(row),
                        SoilRate.poundsPerCubicInch(row.number("nh_lb_per_in3", 0.1, 1_000)),
                        SoilRate.poundsPerCubicInch(row.number("nh_below_water_lb_per_in3", 0.1, 1_000)),
                        Angle.degrees(row.number("friction_deg", 20, 50)),
                        Density.pcf(row.number("weight_pcf", 60, 160)),
                        row.needed("source")));
    }

    public static CsvTable<ClayFeel> clays(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("state", "su_psf", "source"),
                row -> new ClayFeel(state(row), Pressure.psf(row.number("su_psf", 50, 20_000)), row.needed("source")));
    }

    private static SoilState state(CsvRow row) {
        for (SoilState state : SoilState.values()) {
            if (state.key().equals(row.text("state"))) return state;
        }
        row.error("state", "this is no soil state", "write loose, medium, dense, soft, firm or stiff");
        return SoilState.MEDIUM;
    }
}
