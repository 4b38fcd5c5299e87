package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FullBarsTest {
    @Test
    void twoBarsByHand() {
        Cutting cutting = cutting(10, List.of(6, 5, 4, 3, 2));
        FullBars.Found found = FullBars.of(cutting, full(cutting), new Effort(1_000_000));
        assertThat(found.bars()).hasSize(2);
        assertThat(found.shown()).isTrue();
    }

    @Test
    void nothingMakesUpTheRestOfASeven() {
        Cutting cutting = cutting(10, List.of(7, 7, 6));
        FullBars.Found found = FullBars.of(cutting, full(cutting), new Effort(1_000_000));
        assertThat(found.bars()).isEmpty();
        assertThat(found.shown()).isTrue();
    }

    /** Two of one length in a bar, and of another length three pieces, so that a size is taken more than once. */
    @Test
    void aSizeIsTakenAsOftenAsItIsThere() {
        Cutting cutting = cutting(12, List.of(5, 5, 5, 5, 2, 2, 4, 4, 4));
        FullBars.Found found = FullBars.of(cutting, full(cutting), new Effort(1_000_000));
        assertThat(found.bars()).hasSize(3);
    }

    @Test
    void whetherThereIsAPlanIsAsTryingAllSays() {
        int there = 0;
        for (int seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            List<Integer> sizes = new ArrayList<>();
            int bar = 20 + random.nextInt(15);
            int over = 0;
            for (int i = 0; i < 8; i++) {
                sizes.add(3 + random.nextInt(bar / 2));
                over += sizes.get(i);
            }
            sizes.add(bar - over % bar);
            Cutting cutting = cutting(bar, sizes);
            FullBars.Found found = FullBars.of(cutting, full(cutting), new Effort(10_000_000));
            boolean tried = covers(full(cutting), cutting.demand.clone(), 0);
            assertThat(found.shown()).isTrue();
            assertThat(found.bars().isEmpty()).as("seed " + seed).isEqualTo(!tried);
            int[] demand = cutting.demand.clone();
            for (Column each : found.bars()) each.takeFrom(demand);
            if (tried) assertThat(demand).containsOnly(0);
            if (tried) there++;
        }
        assertThat(there).isBetween(20, 280);
    }

    /** A six and a three waste one of ten, a five and a four another one: two bars do where two may be lost, and none where only one may. */
    @Test
    void barsLoseNoMoreThanTheyMay() {
        Cutting cutting = cutting(10, List.of(6, 5, 4, 3));
        List<Column> patterns = List.of(
                new Column(0, new int[] {0, 3}, new int[] {1, 1}), new Column(0, new int[] {1, 2}, new int[] {1, 1}));
        long[] loss = {1, 1};
        assertThat(FullBars.losing(cutting, patterns, loss, 2, new Effort(1_000))
                        .bars())
                .hasSize(2);
        FullBars.Found none = FullBars.losing(cutting, patterns, loss, 1, new Effort(1_000));
        assertThat(none.bars()).isEmpty();
        assertThat(none.shown()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"1, 120", "2, 120", "3, 216", "4, 216"})
    void barsOfThreeAreFoundAgain(int seed, int pieces) {
        Random random = new Random(seed);
        List<Integer> sizes = new ArrayList<>();
        while (sizes.size() < pieces) {
            int first = 2000 + random.nextInt(2000);
            int second = 2000 + random.nextInt(2000);
            sizes.addAll(List.of(first, second, 10_000 - first - second));
        }
        Cutting cutting = cutting(10_000, sizes);
        List<Column> usual = FullBars.usual(cutting, full(cutting), pieces / 3);
        FullBars.Found found = FullBars.of(cutting, usual, new Effort(500_000_000));
        assertThat(found.bars()).hasSize(pieces / 3);
    }

    static boolean covers(List<Column> full, int[] demand, int from) {
        int next = from;
        while (next < demand.length && demand[next] == 0) next++;
        if (next == demand.length) return true;
        for (Column each : full) {
            if (each.count(next) == 0 || each.timesIn(demand) == 0) continue;
            each.takeFrom(demand);
            boolean there = covers(full, demand, next);
            for (int k = 0; k < each.size.length; k++) demand[each.size[k]] += each.times[k];
            if (there) return true;
        }
        return false;
    }

    static List<Column> full(Cutting cutting) {
        Effort effort = new Effort(10_000_000);
        long bars = cutting.volume() / cutting.room[0];
        PatternPool pool =
                PatternPool.of(cutting, Bound.ofVolume(cutting), new Pricing(cutting, effort), bars, 100_000, effort);
        assertThat(pool.cutShort()).isFalse();
        return pool.columns();
    }

    static Cutting cutting(int bar, List<Integer> sizes) {
        TreeMap<Integer, Integer> counts = new TreeMap<>((a, b) -> b - a);
        for (int size : sizes) counts.merge(size, 1, Integer::sum);
        return new Cutting(
                counts.keySet().stream().mapToLong(size -> size).toArray(),
                counts.values().stream().mapToInt(count -> count).toArray(),
                new long[] {bar},
                new long[] {1},
                new int[] {Cutting.UNLIMITED});
    }
}
