package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class KnapsackTest {
    @Test
    void agreesWithTryingEverything() {
        Random random = new Random(3);
        for (int round = 0; round < 500; round++) {
            int items = 1 + random.nextInt(5);
            long[] size = new long[items];
            long[] worth = new long[items];
            int[] most = new int[items];
            for (int i = 0; i < items; i++) {
                size[i] = 1L + random.nextInt(20);
                worth[i] = random.nextInt(30);
                most[i] = random.nextInt(5);
            }
            long room = random.nextInt(60);
            Knapsack.Fill fill = Knapsack.best(size, worth, most, room, new Effort(Long.MAX_VALUE));
            assertThat(fill.worth()).isEqualTo(tryAll(size, worth, most, room, 0));
            long used = 0;
            long held = 0;
            for (int i = 0; i < items; i++) {
                assertThat(fill.counts().get(i)).isBetween(0, most[i]);
                used += size[i] * fill.counts().get(i);
                held += worth[i] * fill.counts().get(i);
            }
            assertThat(used).isLessThanOrEqualTo(room);
            assertThat(held).isEqualTo(fill.worth());
        }
    }

    private static long tryAll(long[] size, long[] worth, int[] most, long room, int from) {
        if (from == size.length) return 0;
        long best = 0;
        for (int times = 0; times <= most[from] && times * size[from] <= room; times++)
            best = Math.max(best, times * worth[from] + tryAll(size, worth, most, room - times * size[from], from + 1));
        return best;
    }
}
