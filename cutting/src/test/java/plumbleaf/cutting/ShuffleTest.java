package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

/**
 * Bars cut quite at random, from slivers to nearly a whole bar, and put together again with nothing wasted. That the plan is one of least bars follows from the
 * lengths alone.
 */
class ShuffleTest {
    @Test
    void fewPiecesThatFillABarByHand() {
        assertThat(FewPieces.fill(new long[] {7, 5, 5, 3, 2, 1}, 10, 3, new Effort(1_000_000)))
                .containsExactlyInAnyOrder(
                        new int[] {0, 3}, new int[] {0, 4, 5}, new int[] {1, 2}, new int[] {1, 3, 4}, new int[] {2, 3, 4
                        });
    }

    @ParameterizedTest
    @CsvSource({
        "1, 2500, 201",
        "2, 2500, 201",
        "1, 10000, 402",
        "2, 10000, 402",
        "3, 10000, 402",
        "4, 10000, 402",
        "1, 20000, 600",
        "2, 20000, 600"
    })
    void barsOfThreeAndThreeOfFive(int seed, int bar, int pieces) {
        Random random = new Random(seed);
        List<Integer> sizes = new ArrayList<>();
        for (int five = 0; five < 3; five++) sizes.addAll(parts(bar, 5, random));
        while (sizes.size() < pieces) sizes.addAll(parts(bar, 3, random));
        held(bar, sizes);
    }

    @ParameterizedTest
    @CsvSource({"1, 10000, 115", "2, 10000, 115", "1, 20000, 172", "2, 20000, 172"})
    void barsOfTwoToFive(int seed, int bar, int bars) {
        Random random = new Random(seed);
        List<Integer> sizes = new ArrayList<>();
        for (int n = 0; n < bars; n++) sizes.addAll(parts(bar, 2 + random.nextInt(4), random));
        held(bar, sizes);
    }

    private static List<Integer> parts(int bar, int parts, Random random) {
        TreeSet<Integer> cuts = new TreeSet<>();
        while (cuts.size() < parts - 1) cuts.add(1 + random.nextInt(bar - 1));
        List<Integer> sizes = new ArrayList<>();
        int last = 0;
        for (int cut : cuts) {
            sizes.add(cut - last);
            last = cut;
        }
        sizes.add(bar - last);
        return sizes;
    }

    private static void held(int bar, List<Integer> sizes) {
        List<Piece> pieces = new ArrayList<>();
        for (int size : sizes) pieces.add(Piece.square("p" + pieces.size(), "", size));
        StockBar stock = new StockBar("bar", bar, Money.dollars(1), Supply.asMany(), false);
        CutTask task = new CutTask("tube", pieces, List.of(stock), new SawRules(0, 0, 0), CutTask.USUAL_STEPS);
        CutPlan plan = ((CutAnswer.Planned) new ProvenCutPlanner().order(task)).plan();
        assertThat(plan.bars()).hasSize(sizes.stream().mapToInt(size -> size).sum() / bar);
        assertThat(plan.proven()).isTrue();
        PlanAudit.of(task, plan);
    }
}
