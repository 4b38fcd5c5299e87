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
