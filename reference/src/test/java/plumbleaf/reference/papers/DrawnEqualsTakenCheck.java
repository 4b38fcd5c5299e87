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
import plumbleaf.documents.drawing.Layer;
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
 * take-off; so are the posts.
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
