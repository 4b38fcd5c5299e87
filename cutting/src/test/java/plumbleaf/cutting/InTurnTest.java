package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class InTurnTest {
    /** 7 and 3, then 6 and 4, then 5, 2 and 1: three bars, of 10, 10 and 8. */
    @Test
    void threeBarsByHand() {
        List<Column> bars = InTurn.fill(
                cutting(List.of(7, 6, 5, 4, 3, 2, 1), new long[] {10, 8}, new int[] {2, 1}), new Effort(1_000_000));
        assertThat(bars)
                .containsExactly(
                        Column.of(0, new int[] {1, 0, 0, 0, 1, 0, 0}),
                        Column.of(0, new int[] {0, 1, 0, 1, 0, 0, 0}),
                        Column.of(1, new int[] {0, 0, 1, 0, 0, 1, 1}));
    }

    /** Twenty units in two bars of ten, and nothing makes up the three beside the seven. */
    @Test
    void nothingWhereARestCannotBeMadeUp() {
        assertThat(InTurn.fill(cutting(List.of(7, 7, 6), new long[] {10}, new int[] {2}), new Effort(1_000_000)))
                .isEmpty();
    }

    /** Beside the nine nothing goes: it is passed over in a bar that may waste nothing, and lies in the one that is as long. */
    @Test
    void aLongPieceWaitsForABarThatItFills() {
        List<Column> bars =
                InTurn.fill(cutting(List.of(9, 6, 4), new long[] {10, 9}, new int[] {1, 1}), new Effort(1_000_000));
        assertThat(bars).containsExactly(Column.of(0, new int[] {0, 1, 1}), Column.of(1, new int[] {1, 0, 0}));
    }

    /** A unit may be wasted in all, not in each bar: the two nines leave two. */
    @Test
    void wasteCountsOverAllBars() {
        long[] room = {10};
        assertThat(InTurn.fill(cutting(List.of(9, 6, 4), room, new int[] {2}), new Effort(1_000_000)))
                .hasSize(2);
        assertThat(InTurn.fill(cutting(List.of(9, 9, 6, 4, 1), room, new int[] {3}), new Effort(1_000_000)))
                .hasSize(3);
        assertThat(InTurn.fill(cutting(List.of(9, 9, 6, 5), room, new int[] {3}), new Effort(1_000_000)))
                .isEmpty();
    }

    /** Many small pieces, and bars of three lengths that hold just them: found nearly always, and then every piece lies in one bar. */
    @Test
    void smallPiecesFillBarsOfSeveralLengths() {
        int found = 0;
        for (int seed = 1; seed <= 100; seed++) {
            Random random = new Random(seed);
            int[] supply = {3 + random.nextInt(20), random.nextInt(20), random.nextInt(20)};
            long[] room = {149, 131, 104};
            long left = 0;
            for (int k = 0; k < 3; k++) left += room[k] * supply[k];
            List<Integer> sizes = new ArrayList<>();
            while (left > 0) {
                int size = (int) Math.min(left, 1 + random.nextInt(40));
                sizes.add(size);
                left -= size;
            }
            Cutting cutting = cutting(sizes, room, supply);
            List<Column> bars = InTurn.fill(cutting, new Effort(100_000_000));
            if (bars.isEmpty()) continue;
            found++;
            int[] demand = cutting.demand.clone();
            for (Column bar : bars) {
                assertThat(bar.used(cutting.size)).isLessThanOrEqualTo(cutting.room[bar.kind]);
                bar.takeFrom(demand);
                supply[bar.kind]--;
            }
            assertThat(demand).containsOnly(0);
            assertThat(supply).containsOnly(0);
        }
        assertThat(found).isGreaterThan(90);
    }

    private static Cutting cutting(List<Integer> sizes, long[] room, int[] supply) {
        TreeMap<Integer, Integer> counts = new TreeMap<>((a, b) -> b - a);
        for (int size : sizes) counts.merge(size, 1, Integer::sum);
        return new Cutting(
                counts.keySet().stream().mapToLong(size -> size).toArray(),
                counts.values().stream().mapToInt(count -> count).toArray(),
                room,
                room,
                supply);
    }
}
