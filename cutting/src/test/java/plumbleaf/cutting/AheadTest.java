package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AheadTest {
    @Test
    void twoBarsByHand() {
        Cutting cutting = FullBarsTest.cutting(10, List.of(6, 3, 1, 5, 3, 2));
        FullBars.Found found = Ahead.of(cutting, ofThree(cutting), new Effort(1_000_000));
        assertThat(found.bars()).hasSize(2);
        assertThat(found.shown()).isTrue();
    }

    /** Ten is seven, two and one, and it is four and twice three. */
    @Test
    void aSizeMayBeTwiceInABar() {
        Cutting cutting = FullBarsTest.cutting(10, List.of(7, 2, 1, 4, 3, 3));
        FullBars.Found found = Ahead.of(cutting, ofThree(cutting), new Effort(1_000_000));
        assertThat(found.bars()).hasSize(2);
    }

    @Test
    void nothingMakesUpTheRestOfAnEight() {
        Cutting cutting = FullBarsTest.cutting(10, List.of(8, 5, 2, 2, 2, 1));
        FullBars.Found found = Ahead.of(cutting, ofThree(cutting), new Effort(1_000_000));
        assertThat(found.bars()).isEmpty();
        assertThat(found.shown()).isTrue();
    }

    /** Lists cut from bars of three; in two of three lists a unit goes over from one piece to another, which mostly leaves no plan. */
    @Test
    void whetherThereIsAPlanIsAsTryingAllSays() {
        int there = 0;
        for (int seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            int bar = 60 + random.nextInt(60);
            List<Integer> sizes = new ArrayList<>();
            while (sizes.size() < 21) cutUp(bar, random, sizes);
            int from = random.nextInt(sizes.size());
            int to = random.nextInt(sizes.size());
            if (seed % 3 > 0 && sizes.get(from) > 1) {
                sizes.set(from, sizes.get(from) - 1);
                sizes.set(to, sizes.get(to) + 1);
            }
            Cutting cutting = FullBarsTest.cutting(bar, sizes);
            List<Column> patterns = ofThree(cutting);
            FullBars.Found found = Ahead.of(cutting, patterns, new Effort(50_000_000));
            assertThat(found.shown()).isTrue();
            boolean tried = FullBarsTest.covers(patterns, cutting.demand.clone(), 0);
            assertThat(found.bars().isEmpty()).as("seed " + seed).isEqualTo(!tried);
            int[] demand = cutting.demand.clone();
            for (Column each : found.bars()) each.takeFrom(demand);
            if (!tried) continue;
            assertThat(demand).containsOnly(0);
            there++;
        }
        assertThat(there).isBetween(100, 250);
    }

    /** The plainer search finds none in five times as many steps: hardly more plans than the one that was cut up. */
    @Test
    void barsOfThreeAreFoundAgain() {
        Random random = new Random(-1764597063);
        random.nextInt(2);
        List<Integer> sizes = new ArrayList<>();
        while (sizes.size() < 216) {
            int first = 2000 + random.nextInt(2000);
            int second = 2000 + random.nextInt(2000);
            sizes.addAll(List.of(first, second, 10_000 - first - second));
        }
        Cutting cutting = FullBarsTest.cutting(10_000, sizes);
        List<Column> patterns = ofThree(cutting);
        assertThat(Ahead.suits(cutting, patterns)).isTrue();
        FullBars.Found found = Ahead.of(cutting, patterns, new Effort(60_000_000));
        assertThat(found.bars()).hasSize(72);
        int[] demand = cutting.demand.clone();
        for (Column each : found.bars()) each.takeFrom(demand);
        assertThat(demand).containsOnly(0);
    }

    @Test
    void patternsOfUnlikeNumbersAreForThePlainerSearch() {
        Cutting cutting = FullBarsTest.cutting(10, List.of(6, 4, 5, 3, 2));
        assertThat(Ahead.suits(cutting, FullBarsTest.full(cutting))).isFalse();
    }

    private static List<Column> ofThree(Cutting cutting) {
        return FullBars.usual(cutting, FullBarsTest.full(cutting), cutting.pieces() / 3);
    }

    private static void cutUp(int bar, Random random, List<Integer> to) {
        int first = bar / 5 + random.nextInt(bar / 5);
        int second = bar / 5 + random.nextInt(bar / 5);
        to.addAll(List.of(first, second, bar - first - second));
    }
}
