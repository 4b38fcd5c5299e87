package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
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

/** Thousands of pieces, hundreds of lengths, none of them in round numbers: the plan is good, sound, and says how far it is proven, in a job's effort. */
@Tag("slow")
class MileOfFenceTest {
    private static final long INCH = 25_400_000;

    @ParameterizedTest
    @CsvSource({
        // pieces, lengths, from and to in inches, the bars, the gap allowed in thousandths of the cost
        "2000, 600, 20, 90, posts, 4",
        "2000, 60, 20, 90, posts, 0",
        "1000, 115, 20, 90, tube, 6",
        "2000, 600, 85, 100, rails, 0",
        "2000, 600, 100, 120, posts, 0",
        "6000, 3, 50, 72, rails, 1"
    })
    void aMileIsAMatterOfSeconds(int count, int lengths, int from, int to, String of, long allowed) {
        Random random = new Random(5280);
        List<Long> length = new ArrayList<>();
        for (int i = 0; i < lengths; i++) length.add((long) ((from + (to - from) * random.nextDouble()) * INCH));
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++)
            pieces.add(Piece.square("p" + i, "B" + i / 3, length.get(i < lengths ? i : random.nextInt(lengths))));
        CutTask task = new CutTask("mile", pieces, bars(of), new SawRules(INCH / 8, 0, 24 * INCH), CutTask.JOB_STEPS);
        CutPlan plan = ((CutAnswer.Planned) new ProvenCutPlanner().plan(task)).plan();
        PlanAudit.of(task, plan);
        long gap = plan.cost().cents() - plan.lowerBound().cents();
        assertThat(gap * 1000).isLessThanOrEqualTo(allowed * plan.cost().cents());
        assertThat(plan.proven()).isEqualTo(gap == 0);
        assertThat(plan.steps()).isLessThan(CutTask.JOB_STEPS + CutTask.JOB_STEPS / 4);
    }

    private static List<StockBar> bars(String of) {
        return switch (of) {
            case "posts" -> List.of(bar(21, 10_080));
            case "tube" -> List.of(bar(20, 5_970), bar(24, 6_985));
            default -> List.of(bar(8, 940), bar(10, 1_190), bar(12, 1_440), bar(16, 1_990));
        };
    }

    private static StockBar bar(long feet, long cents) {
        return new StockBar(feet + " ft", feet * 12 * INCH, Money.cents(cents), Supply.asMany(), false);
    }
}
