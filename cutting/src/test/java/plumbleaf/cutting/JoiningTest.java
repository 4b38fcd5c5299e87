package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

class JoiningTest {
    private static final long BAR = 60;

    /** 31 leaves 29, odd: of 16, 14, 6, 4 and the one odd size, 9, nothing makes that up without the 9; what is then left, 20, are 16 and 4 or 14 and 6. */
    @Test
    void whatTheRestCannotDoWithoutLiesBesideIt() {
        Joining joining = joined(0, 31, 16, 14, 9, 6, 4, 40);
        assertThat(joining.isImpossible()).isFalse();
        assertThat(joining.joins()).isEqualTo(1);
        assertThat(joining.fullBars()).isZero();
        // all lengths are even now and have been halved
        assertThat(joining.rest().size).containsExactly(20, 8, 7, 3, 2);
        assertThat(joining.rest().demand).containsExactly(2, 1, 1, 1, 1);
    }

    @Test
    void whatJustFillsTheRestLiesThere() {
        Joining joining = joined(0, 40, 20, 35, 15, 10);
        assertThat(joining.fullBars()).isEqualTo(2);
        assertThat(joining.rest().pieces()).isZero();
    }

    @Test
    void aRestThatNothingMakesUpIsShown() {
        assertThat(joined(0, 31, 28, 30, 30, 1).isImpossible()).isFalse();
        assertThat(joined(0, 31, 26, 2, 30, 30, 31).isImpossible()).isTrue();
        assertThat(joined(3, 31, 26, 2, 30, 30, 31).isImpossible()).isTrue();
    }

    /** All plans tried, before and after: there is a plan of so little waste in both or in none. */
    @Test
    void leavesItAsItWasWhetherThereIsAPlan() {
        Random random = new Random(17);
        int none = 0;
        int shown = 0;
        for (int round = 0; round < 600; round++) {
            List<Integer> sizes = new ArrayList<>();
            for (int bar = 0; bar < 3; bar++) {
                int first = 25 + random.nextInt(28);
                int second = 1 + random.nextInt(59 - first);
                sizes.addAll(List.of(first, second));
                if (first + second < BAR) sizes.add((int) BAR - first - second);
            }
            // one longer and one shorter: mostly no plan without waste is left
            int longer = random.nextInt(sizes.size());
            int shorter = random.nextInt(sizes.size());
            int by = random.nextInt(3);
            if (sizes.get(shorter) > by && sizes.get(longer) + by < BAR) {
                sizes.set(longer, sizes.get(longer) + by);
                sizes.set(shorter, sizes.get(shorter) - by);
            }
            int waste = random.nextInt(3);
            int shortest = sizes.indexOf(Collections.min(sizes));
            if (sizes.get(shortest) <= waste) waste = 0;
            sizes.set(shortest, sizes.get(shortest) - waste);
            boolean before = least(sizes) <= 3;
            int[] array = sizes.stream().mapToInt(each -> each).toArray();
            if (Arrays.stream(array).max().orElse(0) * 2L < BAR) continue;
            Joining joining = joined(waste, array);
            if (joining.isImpossible()) {
                assertThat(before).isFalse();
                shown++;
                continue;
            }
            Cutting rest = joining.rest();
            List<Integer> left = new ArrayList<>();
            for (int i = 0; i < rest.sizes(); i++) {
                for (int n = 0; n < rest.demand[i]; n++) left.add((int) (rest.size[i] * BAR / rest.room[0]));
            }
            assertThat(joining.fullBars() + least(left) <= 3).isEqualTo(before);
            if (!before) none++;
        }
        assertThat(none).isPositive();
        assertThat(shown).isPositive();
    }

    private static int least(List<Integer> sizes) {
        if (sizes.isEmpty()) return 0;
        List<Piece> pieces = new ArrayList<>();
        for (int size : sizes) pieces.add(Piece.square("p" + pieces.size(), "", size));
        StockBar bar = new StockBar("bar", BAR, Money.dollars(1), Supply.asMany(), false);
        return (int) (TryAll.leastCents(new CutTask("t", pieces, List.of(bar), new SawRules(0, 0, 0), 1)) / 100);
    }

    private static Joining joined(long waste, int... pieces) {
        int[] sizes = Arrays.stream(pieces)
                .distinct()
                .map(each -> -each)
                .sorted()
                .map(each -> -each)
                .toArray();
        int[] demand = Arrays.stream(sizes)
                .map(size ->
                        (int) Arrays.stream(pieces).filter(each -> each == size).count())
                .toArray();
        Cutting cutting = new Cutting(
                Arrays.stream(sizes).asLongStream().toArray(), demand, new long[] {BAR}, new long[] {1}, new int[] {
                    Cutting.UNLIMITED
                });
        // lengths may have been divided: waste with them
        Joining joining = Joining.of(cutting, waste * cutting.room[0] / BAR, new Effort(Long.MAX_VALUE));
        for (Column bar : joining.whole(List.of()))
            assertThat(bar.used(cutting.size)).isEqualTo(cutting.room[0]);
        return joining;
    }
}
