package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

class OddSetsTest {
    /** Five pieces in a ring, each half a time with the one before and half with the one after: two bars and a half where three are needed. Beside them two pieces in one bar. */
    @Test
    void aRingOfFiveIsShortByHalfABar() {
        List<PoolProgram.Use> used = new ArrayList<>();
        for (int size = 0; size < 5; size++) used.add(together(size, (size + 1) % 5, 0.5));
        used.add(together(5, 6, 1));
        assertThat(OddSets.broken(new int[] {1, 1, 1, 1, 1, 1, 1}, used, new Effort(1_000)))
                .containsExactly(new int[] {0, 1, 2, 3, 4});
    }

    /** Of four none is left over, and of five in three bars none is short. */
    @Test
    void nothingWhereTheBarsAreEnough() {
        List<PoolProgram.Use> four = new ArrayList<>();
        for (int size = 0; size < 4; size++) four.add(together(size, (size + 1) % 4, 0.5));
        assertThat(OddSets.broken(new int[] {1, 1, 1, 1}, four, new Effort(1_000)))
                .isEmpty();
        List<PoolProgram.Use> five = List.of(together(0, 1, 1), together(2, 3, 1), together(3, 4, 1));
        assertThat(OddSets.broken(new int[] {1, 1, 1, 1, 1}, five, new Effort(1_000)))
                .isEmpty();
    }

    /** Three alike, two to a bar: one bar and a half. */
    @Test
    void oneSizeAloneMayBeShort() {
        PoolProgram.Use twos = new PoolProgram.Use(0, new Column(0, new int[] {0}, new int[] {2}), 1.5);
        assertThat(OddSets.broken(new int[] {3}, List.of(twos), new Effort(1_000)))
                .containsExactly(new int[] {0});
    }

    /** Two rings of three that a thread of a tenth holds together, six pieces in all: apart each is odd. */
    @Test
    void whatHangsTogetherByAThreadIsLookedAtApart() {
        List<PoolProgram.Use> used = new ArrayList<>();
        for (int ring = 0; ring < 6; ring += 3)
            for (int n = 0; n < 3; n++) used.add(together(ring + n, ring + (n + 1) % 3, 0.5));
        used.add(together(0, 3, 0.1));
        assertThat(OddSets.broken(new int[] {1, 1, 1, 1, 1, 1}, used, new Effort(1_000)))
                .containsExactly(new int[] {0, 1, 2}, new int[] {3, 4, 5});
    }

    /** A hundred pieces, hardly any three of which go into a bar, and twelve lengths of bar at the root of the length: it stood open after all the steps there are. */
    @Test
    void twoToABarOfTwelveLengths() {
        Random random = new Random(906);
        List<Piece> pieces = new ArrayList<>();
        for (int n = 0; n < 100; n++) pieces.add(Piece.square("p" + n, "", 50 + random.nextInt(51)));
        List<StockBar> bars = new ArrayList<>();
        for (int k = 0; k < 12; k++) {
            int length = 100 + 9 * k / 2;
            Money price = Money.cents((long) (100 * StrictMath.sqrt(length)));
            bars.add(new StockBar("b" + k, length, price, Supply.asMany(), false));
        }
        CutTask task = new CutTask("tube", pieces, bars, new SawRules(0, 0, 0), CutTask.JOB_STEPS);
        CutPlan plan = ((CutAnswer.Planned) new ProvenCutPlanner().order(task)).plan();
        PlanAudit.of(task, plan);
        assertThat(plan.proven()).isTrue();
        assertThat(plan.steps()).isLessThan(20_000_000);
    }

    private static PoolProgram.Use together(int one, int other, double times) {
        int[] sizes = {Math.min(one, other), Math.max(one, other)};
        return new PoolProgram.Use(one, new Column(0, sizes, new int[] {1, 1}), times);
    }
}
