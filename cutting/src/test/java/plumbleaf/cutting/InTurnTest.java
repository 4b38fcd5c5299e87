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
        assertThat(bars).hasSize(3);
        assertThat(bars.stream().mapToInt(bar -> bar.kind)).containsExactly(0, 0, 1);
    }

    @Test
    void nothingWhereARestCannotBeMadeUp() {
        assertThat(InTurn.fill(cutting(List.of(7, 7, 6), new long[] {10}, new int[] {2}), new Effort(1_000_000)))
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
