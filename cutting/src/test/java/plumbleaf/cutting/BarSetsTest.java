package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class BarSetsTest {
    /** Bars of 10 for $3 and of 7 for $2, sixteen to be held: two sevens fall short, so a seven and a ten at $5 come first. */
    @Test
    void theCheapestSetThatIsLongEnoughByHand() {
        Cutting cutting = cutting(new long[] {10, 7}, new long[] {3, 2}, 4, 4);
        List<List<Integer>> found = new ArrayList<>();
        BarSets sets = sets(cutting, 100);
        long cost = 0;
        while (found.isEmpty()) {
            cost = sets.costFrom(cost + 1, 100);
            sets.each(cost, set -> found.add(List.of(set[0], set[1])));
        }
        assertThat(cost).isEqualTo(5);
        assertThat(found).containsExactly(List.of(1, 1));
    }

    @Test
    void everySetOfEveryCostAndNoOther() {
        for (int seed = 1; seed <= 200; seed++) {
            Random random = new Random(seed);
            long[] room = {20 + random.nextInt(20), 20 + random.nextInt(20), 20 + random.nextInt(20)};
            long[] price = {1 + random.nextInt(9), 1 + random.nextInt(9), random.nextInt(9)};
            Cutting cutting = cutting(room, price, 1 + random.nextInt(5), Cutting.UNLIMITED);
            int below = 30;
            List<String> found = new ArrayList<>();
            BarSets sets = sets(cutting, below);
            for (long cost = sets.costFrom(0, below); cost < below; cost = sets.costFrom(cost + 1, below)) {
                long here = cost;
                assertThat(sets.each(cost, set -> found.add(here + " " + List.of(set[0], set[1], set[2]))))
                        .isTrue();
            }
            assertThat(found).as("seed " + seed).containsExactlyInAnyOrderElementsOf(tried(cutting, below));
        }
    }

    /** Two sevens and a ten, for $7, are all there is: no limit on the cost, and yet an end. */
    @Test
    @Timeout(value = 10, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void endsWithAllBarsWhereNoCostIsTooMuch() {
        Cutting cutting = cutting(new long[] {10, 7}, new long[] {3, 2}, 1, 2);
        BarSets sets = sets(cutting, Long.MAX_VALUE);
        assertThat(sets.costFrom(6, Long.MAX_VALUE)).isEqualTo(7);
        assertThat(sets.costFrom(8, Long.MAX_VALUE)).isEqualTo(Long.MAX_VALUE);
    }

    /** Bars so dear that the table ends far below the cost of any set that does: beyond it sums of lengths decide, as when all are tried. */
    @Test
    void setsDearerThanTheTableGoes() {
        long dear = 10_000_019;
        Cutting cutting = cutting(new long[] {10, 7, 9}, new long[] {3 * dear, 2 * dear + 1, 2 * dear + 7}, 4, 4);
        long below = 7 * dear;
        List<String> found = new ArrayList<>();
        BarSets sets = sets(cutting, below);
        for (long cost : new long[] {4 * dear + 8, 4 * dear + 14, 5 * dear + 1, 5 * dear + 7, 6 * dear + 3}) {
            assertThat(sets.costFrom(cost, below)).isEqualTo(cost);
            assertThat(sets.each(cost, set -> found.add(cost + " " + List.of(set[0], set[1], set[2]))))
                    .isTrue();
        }
        assertThat(found)
                .containsExactly(
                        4 * dear + 8 + " [0, 1, 1]",
                        4 * dear + 14 + " [0, 0, 2]",
                        5 * dear + 1 + " [1, 1, 0]",
                        5 * dear + 7 + " [1, 0, 1]",
                        6 * dear + 3 + " [0, 3, 0]");
    }

    /** By length five sevens would do for sixteen pieces, by worths that let a seven hold four of them only four would not: both have to. */
    @Test
    void everyMeasureHasToDo() {
        Cutting cutting = cutting(new long[] {7, 10}, new long[] {2, 3}, 20, 20);
        Effort effort = new Effort(10_000_000);
        SetsRuledOut ruledOut = new SetsRuledOut(cutting, effort);
        BarSets.Measure length = BarSets.Measure.of(cutting.room, cutting.volume());
        BarSets.Measure worth = BarSets.Measure.of(new long[] {4, 6}, 16);
        assertThat(new BarSets(cutting, List.of(length), 100, ruledOut, effort).costFrom(0, 100))
                .isEqualTo(5);
        assertThat(new BarSets(cutting, List.of(worth, length), 100, ruledOut, effort).costFrom(0, 100))
                .isEqualTo(8);
        assertThat(new BarSets(cutting, List.of(length, worth), 100, ruledOut, effort).costFrom(0, 100))
                .isEqualTo(8);
    }

    private static List<String> tried(Cutting cutting, int below) {
        List<String> tried = new ArrayList<>();
        int pieces = cutting.pieces();
        int[] most = new int[3];
        for (int k = 0; k < 3; k++) most[k] = Math.min(cutting.supply[k], pieces);
        for (int a = 0; a <= most[0]; a++) {
            for (int b = 0; b <= most[1]; b++) {
                for (int c = cutting.price[2] == 0 ? most[2] : 0; c <= most[2]; c++) {
                    long cost = a * cutting.price[0] + b * cutting.price[1] + c * cutting.price[2];
                    long length = a * cutting.room[0] + b * cutting.room[1] + c * cutting.room[2];
                    if (cost < below && length >= cutting.volume()) tried.add(cost + " " + List.of(a, b, c));
                }
            }
        }
        return tried;
    }

    private static BarSets sets(Cutting cutting, long below) {
        Effort effort = new Effort(10_000_000);
        SetsRuledOut ruledOut = new SetsRuledOut(cutting, effort);
        ruledOut.addLength(cutting.room);
        BarSets.Measure length = BarSets.Measure.of(cutting.room, cutting.volume());
        return new BarSets(cutting, List.of(length), below, ruledOut, effort);
    }

    /** Of the first kind so many, of the others as given; sixteen pieces of one unit. */
    private static Cutting cutting(long[] room, long[] price, int first, int others) {
        int[] supply = new int[room.length];
        for (int k = 0; k < supply.length; k++) supply[k] = k == 0 ? first : others;
        return new Cutting(new long[] {1}, new int[] {16}, room, price, supply);
    }
}
