package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class DualFunctionsTest {
    /** Five pieces of six in bars of ten: two never share a bar, though their lengths say three bars. */
    @Test
    void whatIsLongerThanHalfABarLiesAlone() {
        assertThat(bars(10, List.of(6, 6, 6, 6, 6))).isEqualTo(5);
    }

    /** Seven pieces of four in bars of eleven: two to a bar, since three are longer. */
    @Test
    void whatIsLongerThanAThirdLiesInTwos() {
        assertThat(bars(11, List.of(4, 4, 4, 4, 4, 4, 4))).isEqualTo(4);
    }

    /** In bars of ten beside each of three sixes lies one three at most, and three threes in a bar: seven threes need two bars more, where lengths say four in all. */
    @Test
    void shortOnesCountByWhatLongOnesLeave() {
        assertThat(bars(10, List.of(6, 6, 6, 3, 3, 3, 3, 3, 3, 3))).isEqualTo(5);
    }

    /** No count says more bars than the least there are, of all lists tried out; and some say more than lengths do. */
    @Test
    void neverMoreThanTheLeast() {
        int more = 0;
        for (int seed = 1; seed <= 3_000; seed++) {
            Random random = new Random(seed);
            int bar = 10 + random.nextInt(60);
            int[] sizes = random.ints(7, 1, bar + 1).toArray();
            List<Integer> listed = Arrays.stream(sizes).boxed().toList();
            long counted = bars(bar, listed);
            assertThat(counted).as("seed " + seed).isLessThanOrEqualTo(least(sizes, bar));
            long byLength =
                    -Math.floorDiv(-listed.stream().mapToLong(each -> each).sum(), bar);
            assertThat(counted).isGreaterThanOrEqualTo(byLength);
            if (counted > byLength) more++;
        }
        assertThat(more).isGreaterThan(500);
    }

    private static long bars(int bar, List<Integer> sizes) {
        TreeMap<Integer, Integer> counts = new TreeMap<>((a, b) -> b - a);
        for (int size : sizes) counts.merge(size, 1, Integer::sum);
        Cutting cutting = new Cutting(
                counts.keySet().stream().mapToLong(size -> size).toArray(),
                counts.values().stream().mapToInt(count -> count).toArray(),
                new long[] {bar},
                new long[] {1},
                new int[] {Cutting.UNLIMITED});
        return DualFunctions.bars(cutting, new Effort(1_000_000));
    }

    /** By all ways: the fewest bars for each set of pieces, from those of smaller sets. */
    private static int least(int[] sizes, int bar) {
        int[] fewest = new int[1 << sizes.length];
        for (int set = 1; set < fewest.length; set++) {
            fewest[set] = sizes.length;
            for (int one = set; one > 0; one = (one - 1) & set) {
                int sum = 0;
                for (int i = 0; i < sizes.length; i++) if ((one >> i & 1) == 1) sum += sizes[i];
                if (sum <= bar) fewest[set] = Math.min(fewest[set], fewest[set & ~one] + 1);
            }
        }
        return fewest[fewest.length - 1];
    }
}
