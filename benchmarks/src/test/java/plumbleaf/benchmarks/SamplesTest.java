package plumbleaf.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.catalogue.StandardTables;

/** What is measured is what it says it is. */
@Tag("slow")
class SamplesTest {
    @Test
    void aPerimeterHasItsLengthAndAGateEveryFiveHundredFeet() {
        Job mile = Yards.perimeter(1);
        assertThat(mile.runs().get(0).legs().stream()
                        .mapToDouble(leg -> leg.length().inFeet())
                        .sum())
                .isEqualTo(5280);
        assertThat(mile.gates()).hasSize(11);
        assertThat(mile.ground().shots()).hasSize(5280 / 50 + 1);
    }

    @Test
    void nothingOfTheOpenGateIsPinned() {
        Job open = Yards.openYard();
        assertThat(open.builds().of(open.gates().get(0)).isOpen()).isTrue();
    }

    @Test
    void aCutListHasItsSizesAndPieces() {
        for (int seed = 0; seed < CutSample.LISTS; seed++) {
            CutSample sample = CutSample.of(seed);
            assertThat(sample.sizesNm()).hasSize(20).doesNotHaveDuplicates();
            assertThat(sample.task().pieces()).hasSize(300);
        }
    }

    @Test
    void theExponentOfALineThroughPowersIsThePower() {
        List<Scale.Point> points = List.of(
                new Scale.Point(1, 0, 0, 0, 3, 0),
                new Scale.Point(10, 0, 0, 0, 3 * Math.pow(10, 1.25), 0),
                new Scale.Point(100, 0, 0, 0, 3 * Math.pow(100, 1.25), 0));
        assertThat(Scale.exponent(points)).isCloseTo(1.25, within(1e-12));
    }

    @Test
    void aFigureTellsItsMiddleAndWhetherItMeetsItsGoal() {
        Figure figure = Figure.of("start", "ms", List.of(5.0, 1.0, 3.0, 4.0));
        assertThat(figure.median()).isEqualTo(3.5);
        assertThat(figure.upTo(4).row()).isEqualTo("| start | 3.50 ms | 1.00 | 5.00 | 4 | at most 4.00 ms |");
        assertThat(figure.upTo(3).row()).endsWith("at most 3.00 ms, **not met** |");
    }

    /** Ten miles of gates would be quoted three hundred times over: there the changes keep their words, and it is said that they have no price. */
    @Test
    void onAFenceOfMilesItIsSaidWhichChangesHaveNoPrice() {
        Design fence = Designs.of(
                Yards.perimeter(0.6),
                Yards.CATALOGUE,
                StandardTables.load().standards(),
                PriceBook.none("none"),
                new ProvenCutPlanner());
        List<Remedy> priced = fence.findings().stream()
                .flatMap(finding -> finding.remedies().stream())
                .filter(remedy -> remedy.priceChange().isPresent())
                .toList();
        assertThat(priced).isNotEmpty();
        assertThat(fence.findings())
                .filteredOn(finding -> finding.id().equals("price.changes"))
                .extracting(Finding::message)
                .allMatch(words ->
                        words.contains(" of the changes offered would do to the price is left open: a fence of "))
                .hasSize(1);
    }
}
