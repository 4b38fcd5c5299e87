package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The fewest set-ups against every way to lay the pieces into the bars. */
class FewestSetUpsTest {
    @Test
    void asFewAsTheBestOfAllPlans() {
        Random random = new Random(77);
        int fewerThanMerging = 0;
        for (int round = 0; round < 300; round++) {
            long[] size = random.longs(2 + random.nextInt(3), 5, 50).distinct().toArray();
            Arrays.sort(size);
            for (int i = 0; i < size.length / 2; i++) {
                long kept = size[i];
                size[i] = size[size.length - 1 - i];
                size[size.length - 1 - i] = kept;
            }
            long[] room = {60 + random.nextInt(40), 110};
            Cutting cutting = new Cutting(
                    size, new int[size.length], room, new long[] {1, 1}, new int[] {Cutting.UNLIMITED, Cutting.UNLIMITED
                    });
            List<Column> plan = plan(cutting, random);
            List<Column> merged = SetUps.fewer(cutting, plan);
            FewestSetUps.Shown shown = FewestSetUps.of(cutting, merged);
            int best = best(cutting, plan);
            assertThat(shown.least()).as("round " + round).isEqualTo(best);
            assertThat(shown.ways()).isEqualTo(best);
            assertThat(SetUps.count(shown.plan())).isLessThanOrEqualTo(best);
            assertThat(shown.plan().stream().map(bar -> bar.kind).sorted())
                    .containsExactlyElementsOf(
                            plan.stream().map(bar -> bar.kind).sorted().toList());
            assertThat(pieces(cutting, shown.plan())).isEqualTo(pieces(cutting, plan));
            for (Column bar : shown.plan())
                assertThat(bar.used(cutting.size)).isLessThanOrEqualTo(cutting.room[bar.kind]);
            if (best < SetUps.count(merged)) fewerThanMerging++;
        }
        assertThat(fewerThanMerging).isGreaterThan(3);
    }

    @Test
    void aPlanTooLargeSaysHowFarItCame() {
        Random random = new Random(78);
        long[] size = random.longs(40, 50, 500).distinct().sorted().toArray();
        for (int i = 0; i < size.length / 2; i++) {
            long kept = size[i];
            size[i] = size[size.length - 1 - i];
            size[size.length - 1 - i] = kept;
        }
        Cutting cutting = new Cutting(size, new int[size.length], new long[] {1000}, new long[] {1}, new int[] {1000});
        List<Column> plan = new ArrayList<>();
        for (int n = 0; n < 60; n++) plan.add(filled(cutting, 0, 10, random));
        List<Column> merged = SetUps.fewer(cutting, plan);
        FewestSetUps.Shown shown = FewestSetUps.of(cutting, merged);
        assertThat(shown.ways()).isEqualTo(SetUps.count(merged));
        assertThat(shown.least()).isLessThan(shown.ways());
    }

    private static List<Column> plan(Cutting cutting, Random random) {
        List<Column> plan = new ArrayList<>();
        int pieces = 0;
        while (plan.size() < 2 || (plan.size() < 4 && pieces < 6)) {
            Column bar = filled(cutting, random.nextInt(2), 3, random);
            if (bar.isEmpty()) continue;
            plan.add(bar);
            for (int times : bar.times) pieces += times;
        }
        return plan;
    }

    private static Column filled(Cutting cutting, int kind, int tries, Random random) {
        int[] counts = new int[cutting.sizes()];
        long left = cutting.room[kind];
        for (int n = 0; n < tries; n++) {
            int i = random.nextInt(counts.length);
            if (cutting.size[i] > left) continue;
            counts[i]++;
            left -= cutting.size[i];
        }
        return Column.of(kind, counts);
    }

    private static int best(Cutting cutting, List<Column> plan) {
        List<Integer> pieces = new ArrayList<>();
        for (Column bar : plan) {
            for (int k = 0; k < bar.size.length; k++) for (int n = 0; n < bar.times[k]; n++) pieces.add(bar.size[k]);
        }
        int[][] bars = new int[plan.size()][cutting.sizes()];
        long[] left = plan.stream().mapToLong(bar -> cutting.room[bar.kind]).toArray();
        return deal(cutting, pieces, 0, bars, left);
    }

    private static int deal(Cutting cutting, List<Integer> pieces, int at, int[][] bars, long[] left) {
        if (at == pieces.size()) {
            Set<List<Integer>> ways = new LinkedHashSet<>();
            for (int[] bar : bars) {
                List<Integer> way = Arrays.stream(bar).boxed().toList();
                if (way.stream().allMatch(count -> count == 0)) return Integer.MAX_VALUE;
                ways.add(way);
            }
            return ways.size();
        }
        int best = Integer.MAX_VALUE;
        int size = pieces.get(at);
        for (int b = 0; b < bars.length; b++) {
            if (cutting.size[size] > left[b]) continue;
            bars[b][size]++;
            left[b] -= cutting.size[size];
            best = Math.min(best, deal(cutting, pieces, at + 1, bars, left));
            bars[b][size]--;
            left[b] += cutting.size[size];
        }
        return best;
    }

    private static List<Integer> pieces(Cutting cutting, List<Column> bars) {
        int[] sums = new int[cutting.sizes()];
        for (Column bar : bars) for (int k = 0; k < bar.size.length; k++) sums[bar.size[k]] += bar.times[k];
        return Arrays.stream(sums).boxed().toList();
    }
}
