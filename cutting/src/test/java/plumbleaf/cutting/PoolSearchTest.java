package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.bars.CutTask;

class PoolSearchTest {
    /** From all patterns there are: the least cost of all plans tried is found, and nothing below it. */
    @Test
    void findsTheLeastAndShowsThatNothingIsLess() {
        int planned = 0;
        for (int seed = 1; seed <= 400; seed++) {
            CutTask task = ProvenCutPlannerTest.seeded(new Random(seed), 7, 3);
            Cutting cutting = new Sizes(task, Sizes.Lapping.NONE).cutting(false);
            if (!cutting.everySizeFits()) continue;
            List<Column> patterns = patterns(cutting);
            long least = TryAll.leastCents(task);
            PoolSearch all = new PoolSearch(cutting, patterns, new Effort(10_000_000));
            PoolSearch.Verdict any = all.search(1_000_000, 0);
            if (least < 0) {
                assertThat(any).as("seed " + seed).isEqualTo(PoolSearch.Verdict.NONE);
                continue;
            }
            planned++;
            assertThat(any).as("seed " + seed).isEqualTo(PoolSearch.Verdict.FOUND);
            assertThat(all.isBest()).isTrue();
            assertThat(cost(cutting, all.best())).as("seed " + seed).isEqualTo(least);
            PoolSearch less = new PoolSearch(cutting, patterns, new Effort(10_000_000));
            assertThat(less.search(least - 1, 0)).as("seed " + seed).isEqualTo(PoolSearch.Verdict.NONE);
        }
        assertThat(planned).isGreaterThan(200);
    }

    /** Three pieces of which any two go into a bar of $1: three halves of a bar do for fractions, and two bars are needed. */
    @Test
    void fractionsOfPairsDoNotDo() {
        Cutting cutting =
                new Cutting(new long[] {6, 5, 4}, new int[] {1, 1, 1}, new long[] {11}, new long[] {100}, new int[] {
                    Cutting.UNLIMITED
                });
        PoolSearch one = new PoolSearch(cutting, patterns(cutting), new Effort(1_000_000));
        assertThat(one.search(150, 0)).isEqualTo(PoolSearch.Verdict.NONE);
        PoolSearch two = new PoolSearch(cutting, patterns(cutting), new Effort(1_000_000));
        assertThat(two.search(200, 200)).isEqualTo(PoolSearch.Verdict.FOUND);
        assertThat(two.best()).hasSize(2);
    }

    /**
     * Of 3,999 pieces a bar of $40.00 holds 2,000 and one of $39.99 one less: fractions take 1.9995 of the first, for less than $79.99. Two of them are $80.00, and one
     * of each is cheaper.
     */
    @Test
    void nearlyTwoBarsAreNotYetTwo() {
        Cutting cutting = new Cutting(
                new long[] {1}, new int[] {3_999}, new long[] {2_000, 1_999}, new long[] {4_000, 3_999}, new int[] {
                    Cutting.UNLIMITED, Cutting.UNLIMITED
                });
        List<Column> patterns = List.of(Column.of(0, new int[] {2_000}), Column.of(1, new int[] {1_999}));
        PoolSearch search = new PoolSearch(cutting, patterns, new Effort(1_000_000));
        assertThat(search.search(8_000, 0)).isEqualTo(PoolSearch.Verdict.FOUND);
        assertThat(cost(cutting, search.best())).isEqualTo(7_999);
        assertThat(search.isBest()).isTrue();
    }

    /** The only bar there is holds all six pieces, each worth a thousand million: more than a table of such worths takes, and still the only pattern. */
    @Test
    void worthsBeyondTheTableLeaveNoPatternOut() {
        Cutting cutting =
                new Cutting(new long[] {2, 1}, new int[] {2, 4}, new long[] {10}, new long[] {3}, new int[] {1});
        long each = 1_000_000_000;
        Bound bound =
                Bound.of(cutting, cutting.demand, cutting.supply, new long[] {each, each}, new long[] {6 * each}, 1);
        Effort effort = new Effort(1_000_000);
        PatternPool pool = PatternPool.of(cutting, bound, new Pricing(cutting, effort), 3, 100, effort);
        assertThat(pool.columns()).containsExactly(Column.of(0, new int[] {2, 4}));
    }

    /** Without steps nothing is said. */
    @Test
    void unsettledWhenTheStepsAreUsedUp() {
        CutTask task = ProvenCutPlannerTest.seeded(new Random(3), 7, 3);
        Cutting cutting = new Sizes(task, Sizes.Lapping.NONE).cutting(false);
        PoolSearch search = new PoolSearch(cutting, patterns(cutting), new Effort(0));
        assertThat(search.search(1_000_000, 0)).isEqualTo(PoolSearch.Verdict.UNSETTLED);
        assertThat(search.isBest()).isFalse();
    }

    private static long cost(Cutting cutting, List<Column> plan) {
        return plan.stream().mapToLong(bar -> cutting.price[bar.kind]).sum();
    }

    /** All that go into a bar of some kind. */
    private static List<Column> patterns(Cutting cutting) {
        List<Column> patterns = new ArrayList<>();
        for (int k = 0; k < cutting.kinds(); k++) {
            if (cutting.supply[k] > 0) add(cutting, k, 0, cutting.room[k], new int[cutting.sizes()], patterns);
        }
        return patterns;
    }

    private static void add(Cutting cutting, int kind, int size, long room, int[] counts, List<Column> to) {
        if (size == counts.length) {
            Column pattern = Column.of(kind, counts);
            if (!pattern.isEmpty()) to.add(pattern);
            return;
        }
        for (int times = 0; times <= cutting.demand[size] && times * cutting.size[size] <= room; times++) {
            counts[size] = times;
            add(cutting, kind, size + 1, room - times * cutting.size[size], counts, to);
        }
        counts[size] = 0;
    }
}
