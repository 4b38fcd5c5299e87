package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.documents.view.RunProfile;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.BayFill;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Volume;
import plumbleaf.engine.takeoff.Cause;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.pricebook.PriceBooks;

/**
 * Every style fitted every way: the pickets, boards and rails of the drawn profile are measured with a scale on the drawing and are, piece by piece, those of the
 * take-off; so are the posts, the panels with their rails, pickets and gaps, the fabric with its rails and wires, and the sheets of mesh with theirs.
 *
 * Source: plane geometry.
 * Tolerance: 1e-4 in., since cut pieces are whole nanometres and quantities feet.
 */
class DrawnEqualsTakenCheck {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();
    private static final double HAIR_IN = 1e-4;

    /** Wood rails are drawn and cut 3-1/2 in. deep. */
    private static final double RAIL_IN = 3.5;

    /** Lying boards are cut at their full width; the highest is ripped after. */
    private static final double BOARD_IN = 5.5;

    /** Rails of mesh are of 1-1/2 in. pipe, 1.9 in. across. */
    private static final double MESH_RAIL_IN = 1.9;

    /** No picket or board is wider, no bay is shorter. */
    private static final double WIDEST_IN = 10;

    static Stream<Arguments> allWays() {
        return CATALOGUE.styles().stream()
                .map(FenceStyle::id)
                .flatMap(style -> Stream.of(Fit.values()).map(fit -> Arguments.of(style, fit)));
    }

    private static Design design(String style, Fit fit) {
        JobReading reading = JobFile.read(
                "drawn.json",
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"date\": \"2027-04-19\", \"ground\": { \"shots\":"
                        + " [{ \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0\\\"\" },{ \"id\":"
                        + " \"S2\", \"run\": \"R1\", \"station\": \"17'\", \"elevation\": \"-14\\\"\" },{ \"id\": \"S3\","
                        + " \"run\": \"R1\", \"station\": \"43'\", \"elevation\": \"-30\\\"\" } ] },\"runs\": [ { \"id\":"
                        + " \"R1\", \"legs\": [ { \"length\": \"24'\" }, { \"length\": \"19'\", \"turn\": \"90 deg left\""
                        + " } ], \"style\": \""
                        + style + "\", \"infill\": \"5'\", \"fit\": \"" + fit.key()
                        + "\" } ], \"money\": { \"priceBook\": \"example-2027\" } }",
                CATALOGUE);
        Job job = reading.job().orElseThrow(() -> new IllegalArgumentException("Bad job: " + reading.errors()));
        return Designs.of(
                job,
                CATALOGUE,
                StandardTables.load().standards(),
                PriceBooks.of(job).orElseThrow(),
                new ProvenCutPlanner());
    }

    private static List<Mark> drawn(Design design) {
        RunLayout run = design.layout().runs().get(0);
        RunProfile.Strip strip = new RunProfile.Strip(
                run,
                design.ground().profile(run.run()),
                design.posts().stream()
                        .map(post -> new PostDetail(
                                post.post(),
                                Length.inches(10),
                                Length.inches(30),
                                post.length(),
                                "post",
                                Volume.ZERO,
                                "given"))
                        .toList(),
                List.of(),
                List.of(),
                List.of(),
                Offset.ZERO,
                run.line().line().length().asOffset());
        return RunProfile.of(strip, DisplayUnits.US, Scale.ratio(48)).marks();
    }

    /** Lengths in inches of the pieces that a bay takes under a mark: {@code B2.k} for its pickets. */
    private static List<Double> taken(Design design, String prefix) {
        List<Double> lengths = new ArrayList<>();
        for (TakeoffLine line : design.quote().takeoff().lines())
            for (Cause cause : line.causes())
                if (cause.part().matches(prefix + "\\d+") && line.cut()) lengths.add(cause.quantity() * 12);
        Collections.sort(lengths);
        return lengths;
    }

    @ParameterizedTest
    @MethodSource("allWays")
    void whatIsDrawnIsWhatIsTaken(String style, Fit fit) {
        Design design = design(style, fit);
        List<Mark> marks = drawn(design);
        for (Bay bay : design.layout().bays()) {
            List<Area> areas = new ArrayList<>();
            List<Stroke> lines = new ArrayList<>();
            for (Mark mark : marks) {
                if (mark instanceof Area area
                        && area.look().of().equals(bay.id())
                        && area.look().layer() == Layer.PICKETS) areas.add(area);
                if (mark instanceof Stroke line
                        && line.look().of().equals(bay.id())
                        && line.look().layer() == Layer.FENCE) lines.add(line);
            }
            pickets(design, bay, areas);
            boards(design, bay, areas);
            if (!bay.pickets().pickets().isEmpty()) rails(design, bay, lines);
            bay.fill()
                    .match(
                            open -> false,
                            pickets -> false,
                            lying -> false,
                            panel -> panel(design, bay, panel, marks),
                            fabric -> fabric(design, bay, marks),
                            mesh -> mesh(design, bay, marks));
        }
        for (PostDesign post : design.posts())
            assertThat(taken(design, post.id().replaceAll("\\d+$", "")))
                    .as(post.id())
                    .anySatisfy(
                            length -> assertThat(length).isCloseTo(post.length().inches(), within(HAIR_IN)));
    }

    private static void pickets(Design design, Bay bay, List<Area> areas) {
        List<Double> drawn = new ArrayList<>();
        for (Area area : areas) {
            List<Point> at = area.outline();
            if (extent(at) > WIDEST_IN) continue;
            double bottom = (at.get(0).y() + at.get(1).y()) / 2;
            double top = at.size() == 4
                    ? (at.get(2).y() + at.get(3).y()) / 2
                    : at.stream().mapToDouble(Point::y).max().orElseThrow();
            drawn.add(top - bottom);
        }
        Collections.sort(drawn);
        List<Double> taken = taken(design, bay.id() + "\\.k");
        if (bay.pickets().pickets().isEmpty()) return;
        same(bay, drawn, taken);
    }

    private static void boards(Design design, Bay bay, List<Area> areas) {
        List<Double> taken = taken(design, bay.id() + "\\.b");
        if (taken.isEmpty()) return;
        List<Double> drawn = new ArrayList<>();
        for (Area area : areas) {
            List<Point> at = area.outline();
            if (extent(at) <= WIDEST_IN) continue;
            double run = Math.abs(at.get(1).x() - at.get(0).x());
            double rise = Math.abs(at.get(1).y() - at.get(0).y());
            drawn.add(Math.hypot(run, rise) + BOARD_IN * rise / run);
        }
        Collections.sort(drawn);
        same(bay, drawn, taken);
    }

    /** Two lines a rail, its edges. */
    private static void rails(Design design, Bay bay, List<Stroke> lines) {
        List<Double> drawn = new ArrayList<>();
        for (int i = 0; i + 1 < lines.size(); i += 2) {
            List<Point> at = lines.get(i).points();
            double run = Math.abs(at.get(1).x() - at.get(0).x());
            double rise = Math.abs(at.get(1).y() - at.get(0).y());
            drawn.add(Math.hypot(run, rise) + RAIL_IN * rise / run);
        }
        Collections.sort(drawn);
        same(bay, drawn, taken(design, bay.id() + "\\.r"));
    }

    /** What a bay takes of the items that begin so, in their own unit. */
    private static double takenOf(Design design, String item, Bay bay) {
        double sum = 0;
        for (TakeoffLine line : design.quote().takeoff().lines())
            for (Cause cause : line.causes())
                if (line.item().startsWith(item) && cause.part().equals(bay.id())) sum += cause.quantity();
        return sum;
    }

    private static List<Area> areas(List<Mark> marks, Bay bay, Layer layer) {
        return marks.stream()
                .filter(mark -> mark instanceof Area)
                .map(mark -> (Area) mark)
                .filter(area -> area.look().of().equals(bay.id()) && area.look().layer() == layer)
                .toList();
    }

    private static List<Stroke> strokes(List<Mark> marks, Bay bay, Layer layer) {
        return marks.stream()
                .filter(mark -> mark instanceof Stroke)
                .map(mark -> (Stroke) mark)
                .filter(line -> line.look().of().equals(bay.id()) && line.look().layer() == layer)
                .toList();
    }

    private static double long0(List<Point> at) {
        return Math.hypot(
                at.get(1).x() - at.get(0).x(), at.get(1).y() - at.get(0).y());
    }

    /** One panel a bay; its rails as long as made, a bracket at each end; its pickets as many, and the gaps between them as told. */
    private static boolean panel(Design design, Bay bay, BayFill.Panel panel, List<Mark> marks) {
        // Under one level top panels come out of heights that nobody sells: they are told as without a price and not
        // bought.
        double bought = takenOf(design, design.job().runs().get(0).style() + "-", bay);
        assertThat(bought).isEqualTo(bay.fit() == Fit.LEVEL_TOP ? Math.min(1, bought) : 1);
        List<Area> rails = areas(marks, bay, Layer.FENCE);
        assertThat(takenOf(design, "panel-bracket", bay)).isEqualTo(2 * rails.size());
        for (Area rail : rails)
            assertThat(long0(rail.outline())).isCloseTo(panel.length().inches(), within(HAIR_IN));
        List<Double> lefts = new ArrayList<>();
        for (Area picket : areas(marks, bay, Layer.PICKETS))
            lefts.add(picket.outline().stream().mapToDouble(Point::x).min().orElseThrow());
        Collections.sort(lefts);
        assertThat(lefts).hasSize(panel.pickets());
        double width = panel.picket().inches();
        for (int i = 1; i < lefts.size(); i++)
            assertThat(lefts.get(i) - lefts.get(i - 1) - width)
                    .isCloseTo(panel.clear().inches(), within(HAIR_IN));
        return true;
    }

    /** Under a level top the fabric hangs from its level edge, and its bottom is cut to the ground. */
    private static double level(Stroke line) {
        return Math.abs(line.points().get(1).x() - line.points().get(0).x());
    }

    /** Fabric by its bottom edge, each rail by both its edges, each strand of barbed wire by its line. */
    private static boolean fabric(Design design, Bay bay, List<Mark> marks) {
        double bottom = strokes(marks, bay, Layer.PICKETS).stream()
                .filter(line -> line.look().ink() != Ink.HAIR)
                .mapToDouble(line -> bay.fit() == Fit.LEVEL_TOP ? level(line) : long0(line.points()))
                .max()
                .orElseThrow();
        assertThat(bottom).isCloseTo(12 * takenOf(design, "fabric-", bay) - ties(design, bay), within(HAIR_IN));
        double edges = 0;
        double strands = 0;
        for (Stroke line : strokes(marks, bay, Layer.FENCE)) {
            boolean strand = line.look().line() == LineKind.DIMENSION;
            if (strand) strands += long0(line.points());
            else edges += long0(line.points());
        }
        assertThat(edges / 2).isCloseTo(12 * takenOf(design, "SWAGED-", bay), within(HAIR_IN));
        assertThat(strands).isCloseTo(12 * takenOf(design, "barbed-wire", bay), within(HAIR_IN));
        return true;
    }

    /** Ties are called after the fabric and counted by the piece. */
    private static double ties(Design design, Bay bay) {
        return 12 * takenOf(design, "fabric-tie", bay);
    }

    /** Sheets by the area between the outermost wires' lines, rails as the saw cuts them. */
    private static boolean mesh(Design design, Bay bay, List<Mark> marks) {
        double along = strokes(marks, bay, Layer.PICKETS).stream()
                .filter(line ->
                        Math.abs(line.points().get(1).x() - line.points().get(0).x()) > 1)
                .mapToDouble(line -> long0(line.points()))
                .max()
                .orElseThrow();
        double up = strokes(marks, bay, Layer.PICKETS).stream()
                .filter(line ->
                        Math.abs(line.points().get(1).x() - line.points().get(0).x()) < HAIR_IN)
                .mapToDouble(line -> long0(line.points()))
                .max()
                .orElseThrow();
        double ft2 = takenOf(design, "mesh-", bay) - takenOf(design, "mesh-clip", bay);
        assertThat(along * up / 144).isCloseTo(ft2, within(bay.fit() == Fit.LEVEL_TOP ? 0.25 * ft2 : 1e-6));
        List<Double> drawn = new ArrayList<>();
        for (Area rail : areas(marks, bay, Layer.FENCE)) {
            List<Point> at = rail.outline();
            double tilt = Math.abs(
                    (at.get(1).y() - at.get(0).y()) / (at.get(1).x() - at.get(0).x()));
            drawn.add(long0(at) + MESH_RAIL_IN * tilt);
        }
        Collections.sort(drawn);
        same(bay, drawn, taken(design, bay.id() + "\\.r"));
        return true;
    }

    private static double extent(List<Point> at) {
        return at.stream().mapToDouble(Point::x).max().orElseThrow()
                - at.stream().mapToDouble(Point::x).min().orElseThrow();
    }

    private static void same(Bay bay, List<Double> drawn, List<Double> taken) {
        assertThat(drawn).as(bay.id()).hasSameSizeAs(taken);
        for (int i = 0; i < drawn.size(); i++)
            assertThat(drawn.get(i)).as(bay.id()).isCloseTo(taken.get(i), within(HAIR_IN));
    }
}
