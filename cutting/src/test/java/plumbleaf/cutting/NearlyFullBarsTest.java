package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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

/** Pieces cut from full bars of a fine scale: a plan without any waste is there, and nothing but such a plan will do. */
class NearlyFullBarsTest {
    private static final int BAR = 2500;

    @ParameterizedTest
    @CsvSource({"1, 150", "2, 150", "3, 200", "4, 200", "5, 200"})
    void aPlanWithoutWasteIsFoundAgain(int seed, int pieces) {
        Random random = new Random(seed);
        List<Piece> cut = new ArrayList<>();
        int bars = 0;
        while (cut.size() < pieces) {
            int first = (int) (BAR * (0.2 + 0.3 * random.nextDouble()));
            int second = (int) ((BAR - first) * (0.3 + 0.4 * random.nextDouble()));
            for (int size : List.of(first, second, BAR - first - second))
                cut.add(Piece.square("p" + cut.size(), "", size));
            bars++;
        }
        CutTask task = new CutTask(
                "tube",
                cut,
                List.of(new StockBar("bar", BAR, Money.dollars(1), Supply.asMany(), false)),
                new SawRules(0, 0, 0),
                60_000_000);
        CutPlan plan = ((CutAnswer.Planned) new ProvenCutPlanner().plan(task)).plan();
        assertThat(plan.bars()).hasSize(bars);
        assertThat(plan.proven()).isTrue();
        PlanAudit.of(task, plan);
    }
}
