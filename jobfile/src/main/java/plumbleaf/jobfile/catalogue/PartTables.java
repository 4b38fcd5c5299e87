package plumbleaf.jobfile.catalogue;

import java.util.List;
import plumbleaf.engine.catalogue.BoltSize;
import plumbleaf.engine.catalogue.Fastening;
import plumbleaf.engine.catalogue.HingeFixing;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.catalogue.PinPlace;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.catalogue.RollerWay;
import plumbleaf.engine.catalogue.StockLength;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/** The tables of hinges, latches, drop rods, stock lengths and augers. Sizes in inches, weights in pounds; a user's own table has the same headings. */
public final class PartTables {
    private PartTables() {}

    public static CsvTable<HingeModel> hinges(String file, String text) {
        List<String> columns = List.of(
                "id",
                "name",
                "capacity_pair_lb",
                "capacity_width_in",
                "capacity_spacing_in",
                "slack_in",
                "stiffness_lb_per_in",
                "pin_offset_in",
                "pin_swing_side_in",
                "opens_deg",
                "plate_height_in",
                "plate_thickness_in",
                "grip_least_in",
                "grip_most_in",
                "post_fixing",
                "post_bolts",
                "post_size_in",
                "post_drill_in",
                "post_length_in",
                "leaf_fixing",
                "leaf_bolts",
                "leaf_size_in",
                "leaf_drill_in",
                "bolts_apart_in",
                "adjusts_in",
                "rise_per_degree_in",
                "self_closing",
                "weight_lb",
                "source");
        return CsvTable.read(
                file,
                text,
                columns,
                row -> new HingeModel(
                        row.needed("id"),
                        row.needed("name"),
                        rating(row, "capacity_pair_lb", 20_000),
                        inches(row, "capacity_width_in", 1, 480),
                        inches(row, "capacity_spacing_in", 1, 240),
                        inches(row, "slack_in", 0, 0.5),
                        row.number("stiffness_lb_per_in", 100, 1e8),
                        new PinPlace(
                                inches(row, "pin_offset_in", 0, 12),
                                inches(row, "pin_swing_side_in", 0, 12),
                                Angle.degrees(row.number("opens_deg", 1, 360))),
                        new HingeFixing(
                                inches(row, "plate_height_in", 0.5, 24),
                                inches(row, "plate_thickness_in", 0.05, 2),
                                inches(row, "grip_least_in", 0, 24),
                                inches(row, "grip_most_in", 0.25, 24),
                                fastening(row, "post"),
                                fastening(row, "leaf")),
                        inches(row, "adjusts_in", 0, 6),
                        inches(row, "rise_per_degree_in", 0, 0.5),
                        row.yes("self_closing"),
                        pounds(row, "weight_lb", 200),
                        row.needed("source")));
    }

    public static CsvTable<LatchModel> latches(String file, String text) {
        List<String> columns = List.of(
                "id",
                "name",
                "tolerance_in",
                "bite_in",
                "play_in",
                "holds_lb",
                "least_gap_in",
                "greatest_gap_in",
                "self_latching",
                "weight_lb",
                "source");
        return CsvTable.read(
                file,
                text,
                columns,
                row -> new LatchModel(
                        row.needed("id"),
                        row.needed("name"),
                        inches(row, "tolerance_in", 0, 4),
                        inches(row, "bite_in", 0, 12),
                        inches(row, "play_in", 0, 1),
                        rating(row, "holds_lb", 100_000),
                        inches(row, "least_gap_in", 0, 6),
                        inches(row, "greatest_gap_in", 0, 6),
                        row.yes("self_latching"),
                        pounds(row, "weight_lb", 200),
                        row.needed("source")));
    }

    public static CsvTable<RodModel> rods(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("id", "name", "diameter_in", "yield_psi", "guide_play_in", "sleeve_in", "weight_lb", "source"),
                row -> new RodModel(
                        row.needed("id"),
                        row.needed("name"),
                        inches(row, "diameter_in", 0.25, 3),
                        Stress.psi(row.number("yield_psi", 10_000, 200_000)),
                        inches(row, "guide_play_in", 0, 1),
                        sleeve(row),
                        pounds(row, "weight_lb", 200),
                        row.needed("source")));
    }

    /** Of which nobody said how wide it is: a quarter inch over its bar. Judgement. */
    private static Length sleeve(CsvRow row) {
        Length said = inches(row, "sleeve_in", 0, 4);
        return said.isZero() ? inches(row, "diameter_in", 0.25, 3).plus(Length.inches(0.25)) : said;
    }

    public static CsvTable<RollerModel> rollers(String file, String text) {
        List<String> columns = List.of(
                "id",
                "name",
                "way",
                "capacity_lb",
                "side_lb",
                "play_in",
                "rolling",
                "standoff_in",
                "takes_least_in",
                "takes_most_in",
                "bolts",
                "bolt_in",
                "bolts_apart_in",
                "weight_lb",
                "source");
        return CsvTable.read(
                file,
                text,
                columns,
                row -> new RollerModel(
                        row.needed("id"),
                        row.needed("name"),
                        way(row.oneOf("way", List.of("bottom", "top", "grooved"))),
                        rating(row, "capacity_lb", 100_000),
                        rating(row, "side_lb", 100_000),
                        inches(row, "play_in", 0, 1),
                        row.number("rolling", 0, 0.5),
                        inches(row, "standoff_in", 0.5, 24),
                        inches(row, "takes_least_in", 0.5, 24),
                        inches(row, "takes_most_in", 0.5, 24),
                        (int) row.number("bolts", 0, 12),
                        inches(row, "bolt_in", 0.125, 2),
                        inches(row, "bolts_apart_in", 1, 48),
                        pounds(row, "weight_lb", 1000),
                        row.needed("source")));
    }

    private static RollerWay way(String key) {
        for (RollerWay way : RollerWay.values()) if (way.key().equals(key)) return way;
        return RollerWay.BOTTOM;
    }

    public static CsvTable<BoltSize> bolts(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of(
                        "diameter_in",
                        "threads_per_in",
                        "nut_in",
                        "washer_in",
                        "hole_in",
                        "washer_over_in",
                        "wood_washer_over_in",
                        "lag_root_in",
                        "lag_tip_in"),
                row -> new BoltSize(
                        inches(row, "diameter_in", 0.125, 2),
                        (int) row.number("threads_per_in", 4, 40),
                        inches(row, "nut_in", 0.05, 2),
                        inches(row, "washer_in", 0.02, 1),
                        inches(row, "hole_in", 0.125, 3),
                        inches(row, "washer_over_in", 0.25, 6),
                        inches(row, "wood_washer_over_in", 0.25, 6),
                        inches(row, "lag_root_in", 0.05, 2),
                        inches(row, "lag_tip_in", 0.05, 2)));
    }

    public static CsvTable<StockLength> stockLengths(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of("item", "length_ft"),
                row -> new StockLength(row.needed("item"), Length.feet(row.number("length_ft", 1, 100))));
    }

    public static CsvTable<Length> augers(String file, String text) {
        return CsvTable.read(file, text, List.of("diameter_in"), row -> inches(row, "diameter_in", 3, 60));
    }

    /**
     * Columns {@code post_fixing, post_bolts, post_size_in, post_drill_in} or those of the leaf; bolts stand {@code bolts_apart_in} apart. Lag screws go into a wood post
     * alone; they are as long as {@code post_length_in} says.
     */
    private static Fastening fastening(CsvRow row, String side) {
        boolean post = side.equals("post");
        String fixing = row.oneOf(side + "_fixing", post ? List.of("weld", "bolt", "lag") : List.of("weld", "bolt"));
        Length size = inches(row, side + "_size_in", 0.0625, 2);
        if (fixing.equals("lag")) return lagged(row, size);
        if (!fixing.equals("bolt")) return new Fastening.Welded(size);
        return new Fastening.Bolted(
                (int) row.number(side + "_bolts", 1, 12),
                size,
                Length.inches(row.number(side + "_drill_in", size.inches(), size.inches() + 1)),
                inches(row, "bolts_apart_in", 0, 24));
    }

    private static Fastening lagged(CsvRow row, Length size) {
        return new Fastening.Lagged(
                (int) row.number("post_bolts", 1, 12),
                size,
                Length.inches(row.number("post_drill_in", size.inches() / 4, size.inches())),
                inches(row, "post_length_in", 1, 16),
                inches(row, "bolts_apart_in", 0, 24));
    }

    private static Length inches(CsvRow row, String column, double least, double most) {
        return Length.inches(row.number(column, least, most));
    }

    /** A maker's rating; {@code unknown} is none, and never a pass. */
    private static Force rating(CsvRow row, String column, double most) {
        return row.text(column).equals("unknown") ? Force.ZERO : pounds(row, column, most);
    }

    private static Force pounds(CsvRow row, String column, double most) {
        return Force.pounds(row.number(column, 0, most));
    }
}
