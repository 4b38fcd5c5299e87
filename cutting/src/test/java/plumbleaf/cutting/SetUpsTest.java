package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
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

/** Set-ups are saved without touching a bar: whatever was proven of the cost holds of the plan that is cut. */
class SetUpsTest {
    @Test
    void barsOfTwoPatternsAreCutInOneWay() {
        // Two fives and two threes are a five and a three, twice.
        Cutting cutting = cutting(new long[] {5, 3}, 10, 10);
        List<Column> bars = List.of(Column.of(0, new int[] {2, 0}), Column.of(0, new int[] {0, 2}));
        assertThat(SetUps.fewer(cutting, bars))
                .containsExactly(Column.of(0, new int[] {1, 1}), Column.of(0, new int[] {1, 1}));
    }

    @Test
    void twoOddBarsBecomeOneThatIsSetUpAnyway() {
        // 5 + 3 is set up; 5 + 2 and 3 + 2 are 5 + 3 and 2 + 2 together. No two of the three can be cut alike.
        Cutting cutting = cutting(new long[] {5, 3, 2}, 8, 8);
        Column known = Column.of(0, new int[] {1, 1, 0});
        List<Column> bars = List.of(known, Column.of(0, new int[] {1, 0, 1}), Column.of(0, new int[] {0, 1, 1}));
        List<Column> fewer = SetUps.fewer(cutting, bars);
        assertThat(SetUps.count(fewer)).isEqualTo(2);
        assertThat(pieces(cutting, fewer)).isEqualTo(pieces(cutting, bars));
    }

    @Test
    void neverMoreSetUpsNeverAnotherBarNeverAnotherPiece() {
        Random random = new Random(20271);
        int saved = 0;
        for (int round = 0; round < 400; round++) {
            long[] size = random.longs(2 + random.nextInt(5), 5, 60).distinct().toArray();
            Cutting cutting = cutting(size, 100, 140);
            List<Column> bars = new ArrayList<>();
            for (int n = 0; n < 3 + random.nextInt(20); n++) {
                Column bar = filled(cutting, random.nextInt(2), random);
                if (!bar.isEmpty()) bars.add(bar);
            }
            List<Column> fewer = SetUps.fewer(cutting, bars);
            assertThat(fewer.stream().map(bar -> bar.kind).sorted())
                    .containsExactlyElementsOf(
                            bars.stream().map(bar -> bar.kind).sorted().toList());
            assertThat(pieces(cutting, fewer)).isEqualTo(pieces(cutting, bars));
            for (Column bar : fewer) assertThat(used(cutting, bar)).isLessThanOrEqualTo(cutting.room[bar.kind]);
            assertThat(SetUps.count(fewer)).isLessThanOrEqualTo(SetUps.count(bars));
            saved += SetUps.count(bars) - SetUps.count(fewer);
        }
        assertThat(saved).isGreaterThan(400);
    }

    @Test
    void aPlanCostsWhatItsBarsCostAndStaysProven() {
        Random random = new Random(416);
        for (int round = 0; round < 60; round++) {
            List<Piece> pieces = new ArrayList<>();
            for (int kind = 0; kind < 4; kind++) {
                long length = 20L + random.nextInt(60);
                for (int n = 0; n < 1 + random.nextInt(5); n++)
                    pieces.add(Piece.square("p" + pieces.size(), "G" + random.nextInt(3), length));
            }
            List<StockBar> bars = List.of(
                    new StockBar("short", 120, Money.dollars(10), Supply.asMany(), false),
                    new StockBar("long", 200, Money.dollars(16), Supply.asMany(), false));
            CutTask task = new CutTask("t", pieces, bars, new SawRules(1, 0, 10), CutTask.USUAL_STEPS);
            CutPlan plan = ((CutAnswer.Planned) new ProvenCutPlanner().plan(task)).plan();
            PlanAudit.of(task, plan);
            assertThat(plan.proven()).isTrue();
        }
    }

    @Test
    void piecesOfOneLeafLieTogetherWhereItCostsNothing() {
        // Two leaves alike: whichever way stiles and rails are dealt out, a bar can hold one of each of the same leaf.
        List<Piece> pieces = List.of(
                Piece.square("a1", "G1a", 60),
                Piece.square("a2", "G1a", 40),
                Piece.square("b1", "G1b", 60),
                Piece.square("b2", "G1b", 40));
        StockBar bar = new StockBar("bar", 100, Money.dollars(1), Supply.asMany(), false);
        CutTask task = new CutTask("t", pieces, List.of(bar), new SawRules(0, 0, 0), CutTask.USUAL_STEPS);
        CutPlan plan = ((CutAnswer.Planned) new ProvenCutPlanner().plan(task)).plan();
        assertThat(SawOrder.splits(plan.bars())).isEqualTo(2);
    }

    private static Cutting cutting(long[] size, long... room) {
        long[] price = new long[room.length];
        int[] supply = new int[room.length];
        Arrays.fill(price, 1);
        Arrays.fill(supply, Cutting.UNLIMITED);
        return new Cutting(size, new int[size.length], room, price, supply);
    }

    private static Column filled(Cutting cutting, int kind, Random random) {
        int[] counts = new int[cutting.sizes()];
        long left = cutting.room[kind];
        for (int n = 0; n < 12; n++) {
            int i = random.nextInt(counts.length);
            if (cutting.size[i] > left) continue;
            counts[i]++;
            left -= cutting.size[i];
        }
        return Column.of(kind, counts);
    }

    private static List<Integer> pieces(Cutting cutting, List<Column> bars) {
        List<Integer> sums = new ArrayList<>();
        for (int i = 0; i < cutting.sizes(); i++) {
            int at = i;
            sums.add(bars.stream().mapToInt(bar -> bar.count(at)).sum());
        }
        return sums;
    }

    private static long used(Cutting cutting, Column bar) {
        long used = 0;
        for (int i = 0; i < cutting.sizes(); i++) used += bar.count(i) * cutting.size[i];
        return used;
    }
}
