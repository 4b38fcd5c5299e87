package plumbleaf.documents.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.documents.Samples;
import plumbleaf.engine.quantity.LengthText;

/** Dimensions, ordinates and labels find room of their own. */
class PlacementTest {
    private static final List<DimensionRows.Side> SIDES = List.of(DimensionRows.Side.values());

    @Test
    void spreadMovesNeighboursEquallyAndNoMoreThanNeeded() {
        assertThat(Spread.apart(List.of(0.0, 0.0, 10.0), 2)).containsExactly(-1.0, 1.0, 10.0);
        assertThat(Spread.apart(List.of(0.0, 5.0, 10.0), 2)).containsExactly(0.0, 5.0, 10.0);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void dimensionRowsNeverOverlap(int seed) {
        Random random = new Random(seed);
        Scale scale = Scale.ratio(12);
        DimensionRows rows = new DimensionRows(SIDES.get(seed % 4), 0, scale);
        for (int i = 0; i < 25; i++) {
            double from = random.nextDouble() * 150;
            double to = from + 0.2 + random.nextDouble() * random.nextDouble() * 60;
            boolean level = seed % 4 < 2;
            rows.add(
                    level ? Point.at(from, 0) : Point.at(0, from),
                    level ? Point.at(to, 0) : Point.at(0, to),
                    LengthText.feetAndInches(to - from),
                    "");
        }
        assertThat(Overlaps.of(Drawing.of("rows", scale, rows.marks()))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void noThinLineOfALabelStrikesThroughAnother(int seed) {
        Random random = new Random(seed);
        Scale scale = Scale.ratio(48);
        Labels labels = new Labels(scale);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < 24; i++)
            marks.addAll(labels.beside(
                    Point.at(random.nextDouble() * 300, random.nextDouble() * 150),
                    "P" + i + " " + LengthText.feetAndInches(i * 7.5),
                    0.5,
                    Look.note()));
        assertThat(struck(marks, scale)).isEmpty();
    }

    private static List<String> struck(List<Mark> marks, Scale scale) {
        List<String> struck = new ArrayList<>();
        for (Mark one : marks)
            for (Primitive line : one.drawn(scale))
                for (Mark other : marks)
                    for (Primitive text : other.drawn(scale))
                        if (line instanceof Stroke stroke
                                && text instanceof Text words
                                && strikes(stroke, words, scale)) struck.add(words.text());
        return struck;
    }

    /** Looked along in steps finer than lettering is high; its ends touch the label it belongs to. */
    private static boolean strikes(Stroke stroke, Text words, Scale scale) {
        Box box = words.extents(scale).grown(-scale.real(0.03));
        Point from = stroke.points().get(0);
        Point to = stroke.points().get(1);
        for (int i = 0; i <= 400; i++) {
            Point at = from.shareOf(i / 400.0, to);
            if (box.contains(Box.of(at, at))) return true;
        }
        return false;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void labelsAndOrdinatesNeverOverlap(int seed) {
        Random random = new Random(seed);
        Scale scale = Scale.ratio(48);
        Labels labels = new Labels(scale);
        List<Mark> marks = new ArrayList<>();
        OrdinateRow row = OrdinateRow.distances(-400, scale);
        for (int i = 0; i < 20; i++) {
            Point at = Point.at(random.nextDouble() * 600, random.nextDouble() * 300);
            marks.addAll(labels.beside(at, "S" + i + " " + LengthText.feetAndInches(at.y()), 0.5, Look.note()));
            row.add(at, LengthText.feetAndInches(at.x()), "");
        }
        marks.addAll(row.marks());
        assertThat(Overlaps.of(Drawing.of("labels", scale, marks))).isEmpty();
    }

    @Test
    void nothingOnTheSampleSheetTouchesOrLeavesIt() {
        for (PaperSize paper : PaperSize.values())
            assertThat(Overlaps.of(Samples.sheet(paper).page("1 of 1")).stream()
                            .filter(found ->
                                    paper == PaperSize.TABLOID || paper == PaperSize.A3 || found.startsWith("beyond")))
                    .as(paper.words())
                    .isEmpty();
    }

    @Test
    void arcExtentsReachTheQuarterPoints() {
        Box box = new Arc(Point.at(0, 0), 2, Math.PI / 4, Math.PI / 2, Look.note()).extents(Scale.FULL);
        assertThat(box.maxY()).isCloseTo(2, within(1e-12));
        assertThat(box.minY()).isCloseTo(Math.sqrt(2), within(1e-12));
    }
}
