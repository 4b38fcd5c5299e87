package plumbleaf.browser.packed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was told to the odds they tell again, whatever it was, and in fewer octets the less it surprises. */
class OddsTest {
    private static final int MANY = 20_000;
    private static final int[] EDGES = {0, 10, 11, 26, 27, 282, 283, 4378, 4379, 69_914, 69_915, Integer.MAX_VALUE, -1};

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void numbersOfEverySizeComeBack(long seed) {
        Odds odds = new Odds(new byte[0]);
        tell(odds, new Random(seed), false);
        tell(new Odds(odds.finished()), new Random(seed), true);
    }

    /** The same steps twice: told the numbers, and told none but those asked for. */
    private static void tell(Odds odds, Random random, boolean reads) {
        int last = 0;
        for (int i = 0; i < MANY; i++) {
            int next = random.nextInt(4) == 0
                    ? EDGES[random.nextInt(EDGES.length)]
                    : random.nextInt() >>> random.nextInt(32);
            int contexts = random.nextInt(3);
            odds.context(Part.OP, last);
            if (contexts > 0) odds.context(Part.OP, last, i & 7);
            if (contexts > 1) odds.context(Part.OP, last, i & 7, 1, 2, 3);
            last = odds.number(Part.OP, reads ? 0 : next);
            assertThat(last).isEqualTo(next);
            odds.context(Part.OCTET, last);
            odds.context(Part.OCTET, last, 1);
            assertThat(odds.octet(Part.OCTET, reads ? 0 : next & 255)).isEqualTo(next & 255);
            odds.context(Part.HIT, last);
            odds.context(Part.HIT, 1);
            assertThat(odds.flag(Part.HIT, reads ? 0 : next & 1)).isEqualTo(next & 1);
        }
    }

    @Test
    void whatIsAlwaysAlikeTakesHardlyAnything() {
        assertThat(octets(new Random(7), 1)).isLessThan(200);
    }

    @Test
    void whatIsWhollyOpenTakesLittleMoreThanItself() {
        assertThat(octets(new Random(7), 256)).isBetween(MANY, MANY * 12 / 10);
    }

    private static int octets(Random random, int choices) {
        Odds odds = new Odds(new byte[0]);
        for (int i = 0; i < MANY; i++) {
            odds.context(Part.WORDS, i & 3);
            odds.context(Part.WORDS, 1, 2);
            odds.octet(Part.WORDS, random.nextInt(choices));
        }
        return odds.finished().length;
    }
}
