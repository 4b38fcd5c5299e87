package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FillTableTest {
    @Test
    void agreesWithTheListsAndTracesWhatItFound() {
        Random random = new Random(23);
        for (int round = 0; round < 300; round++) {
            int sizes = 1 + random.nextInt(9);
            long[] size = new long[sizes];
            int[] demand = new int[sizes];
            for (int i = 0; i < sizes; i++) {
                size[i] = 1L + random.nextInt(40);
                demand[i] = random.nextInt(12);
            }
            long room = 20L + random.nextInt(100);
            // a size and a room without common divisor, so that nothing is divided
            size[0] = 1;
            Cutting cutting = new Cutting(size, demand, new long[] {room}, new long[] {1}, new int[] {9});
            FillTable table = FillTable.of(cutting);
            Effort effort = new Effort(Long.MAX_VALUE);
            for (int again = 0; again < 3; again++) {
                long[] worth = new long[sizes];
                for (int i = 0; i < sizes; i++) worth[i] = random.nextInt(50);
                table.fill(worth, demand, effort);
                List<Integer> expected = List.of(
                        (int) Knapsack.best(size, worth, demand, room, effort).worth());
                assertThat(List.of(table.best(0, room))).isEqualTo(expected);
                int[] counts = new int[sizes];
                table.trace(0, room, counts);
                long used = 0;
                long held = 0;
                for (int i = 0; i < sizes; i++) {
                    assertThat(counts[i]).isBetween(0, demand[i]);
                    used += counts[i] * size[i];
                    held += counts[i] * worth[i];
                }
                assertThat(used).isLessThanOrEqualTo(room);
                assertThat((int) held).isEqualTo(table.best(0, room));
            }
        }
    }
}
