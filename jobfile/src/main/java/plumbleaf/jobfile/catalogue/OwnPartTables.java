package plumbleaf.jobfile.catalogue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.catalogue.OwnParts;
import plumbleaf.engine.catalogue.RodModel;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.engine.section.TubeProperties;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.table.CsvRow;
import plumbleaf.jobfile.table.CsvTable;

/**
 * Tables of parts that a user brings: hinges, latches, drop rods, roller sets, and tubes or posts by their size. A heading tells which it is. What a maker's sheet does not say
 * may be left out and is taken as this class writes down; a rating may be {@code unknown}.
 */
public final class OwnPartTables {
    private static final double STEEL_LB_PER_FT_PER_IN2 = 490 / 144.0;
    private static final double DESIGN_WALL = 0.93;

    /** What may be left out of a hinge: a steel arm, a welded plate 3 x 1/4 in., a barrel that goes all the way round. Judgement. */
    private static final Map<String, String> HINGE = defaults(
            "capacity_pair_lb", "unknown",
            "capacity_width_in", "72",
            "capacity_spacing_in", "48",
            "slack_in", "0.03125",
            "stiffness_lb_per_in", "60000",
            "pin_swing_side_in", "0",
            "opens_deg", "180",
            "plate_height_in", "3",
            "plate_thickness_in", "0.25",
            "grip_least_in", "0",
            "grip_most_in", "12",
            "post_fixing", "weld",
            "post_bolts", "0",
            "post_size_in", "0.1875",
            "post_drill_in", "0",
            "post_length_in", "0",
            "leaf_fixing", "weld",
            "leaf_bolts", "0",
            "leaf_size_in", "0.1875",
            "leaf_drill_in", "0",
            "bolts_apart_in", "0",
            "adjusts_in", "0",
            "rise_per_degree_in", "0",
            "self_closing", "no",
            "weight_lb", "3");

    /** What may be left out of a set of rollers: a rating is then unknown. Judgement. */
    private static final Map<String, String> ROLLER = defaults(
            "way", "bottom",
            "capacity_lb", "unknown",
            "side_lb", "unknown",
            "play_in", "0.0625",
            "rolling", "0.03",
            "takes_least_in", "0.5",
            "takes_most_in", "24",
            "bolts", "4",
            "bolt_in", "0.5",
            "bolts_apart_in", "6",
            "weight_lb", "25");

    /** What may be left out of a drop rod: guides drilled 1/16 in. over; a sleeve of 0 is one whose width nobody said. Judgement. */
    private static final Map<String, String> ROD =
            defaults("guide_play_in", "0.0625", "sleeve_in", "0", "weight_lb", "6");

    private static final Map<String, String> LATCH = defaults(
            "tolerance_in", "0.25",
            "bite_in", "0.5",
            "play_in", "0.125",
            "holds_lb", "unknown",
            "least_gap_in", "0.375",
            "greatest_gap_in", "1.25",
            "self_latching", "no",
            "weight_lb", "2");

    /** What a table came to: the parts of its good rows, and every bad row. */
    public record Answer(OwnParts parts, List<InputError> errors) {
        public Answer {
            errors = List.copyOf(errors);
        }
    }

    private OwnPartTables() {}

    public static Answer read(String file, String text) {
        List<String> rows = new ArrayList<>();
        for (String line : text.split("\\R", -1)) if (!line.isBlank() && !line.startsWith("#")) rows.add(line.strip());
        return read(new OwnParts.Table(file, rows));
    }

    public static Answer read(OwnParts.Table table) {
        if (table.rows().isEmpty()) return bad(table, "the table is empty", "start it with its headings");
        List<String> headings = List.of(table.rows().get(0).split(",", -1));
        if (headings.contains("pin_offset_in")) {
            CsvTable<?> read = PartTables.hinges(table.file(), filled(table, headings, HINGE));
            return answer(
                    table,
                    read,
                    is -> parts(table, hinges(table, headings), List.of(), List.of(), List.of(), List.of()));
        }
        return other(table, headings);
    }

    /** A style file kept with the job, line by line. */
    public static boolean isStyles(OwnParts.Table table) {
        return table.file().endsWith(".json");
    }

    /** @param known what its styles may be made of */
    public static Answer styles(OwnParts.Table table, Catalogue known) {
        byte[] text = String.join("\n", table.rows()).getBytes(StandardCharsets.UTF_8);
        return StyleFile.added(table.file(), text, known)
                .match(
                        good -> new Answer(
                                new OwnParts(
                                        List.of(table),
                                        List.of(),
                                        List.of(),
                                        List.of(),
                                        List.of(),
                                        List.of(),
                                        good.styles()),
                                List.of()),
                        bad -> new Answer(OwnParts.NONE, bad.all()));
    }

    private static List<HingeModel> hinges(OwnParts.Table table, List<String> headings) {
        return PartTables.hinges(table.file(), filled(table, headings, HINGE)).rows();
    }

    private static Answer other(OwnParts.Table table, List<String> headings) {
        if (headings.contains("wall_in")) {
            CsvTable<Section> read = tubes(table.file(), String.join("\n", table.rows()));
            return answer(table, read, is -> parts(table, List.of(), List.of(), List.of(), List.of(), read.rows()));
        }
        if (headings.contains("standoff_in")) {
            var read = PartTables.rollers(table.file(), filled(table, headings, ROLLER));
            return answer(table, read, is -> parts(table, List.of(), List.of(), List.of(), read.rows(), List.of()));
        }
        if (headings.contains("yield_psi")) {
            var read = PartTables.rods(table.file(), filled(table, headings, ROD));
            return answer(table, read, is -> parts(table, List.of(), List.of(), read.rows(), List.of(), List.of()));
        }
        if (headings.contains("tolerance_in") || headings.contains("holds_lb") || headings.contains("bite_in")) {
            var read = PartTables.latches(table.file(), filled(table, headings, LATCH));
            return answer(table, read, is -> parts(table, List.of(), read.rows(), List.of(), List.of(), List.of()));
        }
        return bad(
                table,
                "no heading tells what these parts are",
                "a hinge has pin_offset_in, a latch holds_lb, a rod yield_psi, a set of rollers standoff_in, a tube or post wall_in");
    }

    private static Answer answer(OwnParts.Table table, CsvTable<?> read, Function<OwnParts.Table, OwnParts> parts) {
        return new Answer(read.errors().isEmpty() ? parts.apply(table) : OwnParts.NONE, read.errors());
    }

    private static OwnParts parts(
            OwnParts.Table table,
            List<HingeModel> hinges,
            List<LatchModel> latches,
            List<RodModel> rods,
            List<RollerModel> rollers,
            List<Section> sections) {
        return new OwnParts(List.of(table), hinges, latches, rods, rollers, sections, List.of());
    }

    private static Answer bad(OwnParts.Table table, String problem, String cure) {
        return new Answer(OwnParts.NONE, List.of(InputError.ofFile(table.file(), problem, cure)));
    }

    /** The table with the columns that were left out, each filled with what is taken for it. */
    private static String filled(OwnParts.Table table, List<String> headings, Map<String, String> defaults) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < table.rows().size(); i++) {
            text.append(table.rows().get(i));
            for (Map.Entry<String, String> column : defaults.entrySet())
                if (!headings.contains(column.getKey()))
                    text.append(',').append(i == 0 ? column.getKey() : column.getValue());
            text.append('\n');
        }
        return text.toString();
    }

    /** Tubes and pipes by their size: properties by geometry, a corner radius of twice the wall. Yield and ultimate are the maker's. */
    private static CsvTable<Section> tubes(String file, String text) {
        return CsvTable.read(
                file,
                text,
                List.of(
                        "id",
                        "name",
                        "shape",
                        "depth_in",
                        "width_in",
                        "wall_in",
                        "yield_ksi",
                        "ultimate_ksi",
                        "source"),
                OwnPartTables::tube);
    }

    private static Section tube(CsvRow row) {
        String shape = row.oneOf("shape", List.of("round", "square", "rectangular"));
        Length depth = Length.inches(row.number("depth_in", 0.5, 24));
        Length width = Length.inches(row.number("width_in", 0.5, 24));
        Length wall = Length.inches(row.number("wall_in", 0.02, 2));
        if (wall.inches() * 2 >= Math.min(depth.inches(), width.inches())) {
            row.error("wall_in", "the wall is thicker than half the tube", "check the wall");
            wall = Length.inches(Math.min(depth.inches(), width.inches()) / 4);
        }
        boolean round = shape.equals("round");
        TubeProperties p = round ? TubeProperties.round(depth, wall) : TubeProperties.rectangular(depth, width, wall);
        return new Section(
                row.needed("id"),
                round ? "pipe" : "tube",
                row.needed("name"),
                round ? Shape.ROUND : shape.equals("square") ? Shape.SQUARE : Shape.RECTANGULAR,
                depth,
                round ? depth : width,
                wall,
                wall,
                wall.times(DESIGN_WALL),
                Force.pounds(p.areaIn2() * STEEL_LB_PER_FT_PER_IN2),
                p.areaIn2(),
                p.ixIn4(),
                p.sxIn3(),
                p.zxIn3(),
                p.iyIn4(),
                p.syIn3(),
                p.zyIn3(),
                p.jIn4(),
                Stress.ksi(row.number("yield_ksi", 10, 120)),
                Stress.ksi(row.number("ultimate_ksi", 20, 150)),
                "entered",
                row.needed("source"),
                "entered");
    }

    private static Map<String, String> defaults(String... pairs) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) map.put(pairs[i], pairs[i + 1]);
        return map;
    }
}
