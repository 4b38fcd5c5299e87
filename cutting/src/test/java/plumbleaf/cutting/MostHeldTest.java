package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What bars hold for their money, beside a plain table of all costs. Prices are so low that beyond the table fewer bars than the densest kind costs leave room for it. */
class MostHeldTest {
    private static final int DEAREST = 400_000;
    private static final int UNLIMITED_ENOUGH = 20_000;

    @Test
    void farBeyondTheTableAsInATableOfAllCosts() {
        for (int seed = 1; seed <= 12; seed++) {
            Random random = new Random(seed);
            long[] price = random.longs(3, 40, 300).toArray();
            long[] hold = random.longs(3, 30, 150).toArray();
            long needed = 1_000_000;
            int[] most = {UNLIMITED_ENOUGH, UNLIMITED_ENOUGH, UNLIMITED_ENOUGH};
            MostHeld held =
                    new MostHeld(new int[] {0, 1, 2}, most, price, hold, needed, DEAREST, new Effort(1_000_000_000));
            for (int place = 0; place < 3; place++) {
                long[] table = table(price, hold, place);
                for (int cost = 0; cost <= DEAREST; cost += cost < 240_000 ? 997 : 1)
                    assertThat(held.atMost(place, cost))
                            .as("seed " + seed + ", place " + place + ", cost " + cost)
                            .isEqualTo(table[cost]);
            }
        }
    }

    /** Ten bars of 150 for 1,224 hold 1,500; a cent less has no such ten, and no bar at all costs a cent. */
    @Test
    void byHand() {
        MostHeld held = new MostHeld(
                new int[] {0},
                new int[] {20},
                new long[] {1_224},
                new long[] {150},
                1_400,
                20_000,
                new Effort(1_000_000));
        assertThat(held.atMost(0, 2_448)).isEqualTo(300);
        assertThat(held.atMost(0, 12_240)).isEqualTo(1_400);
        assertThat(held.atMost(0, 12_239)).isEqualTo(MostHeld.NONE);
        assertThat(held.isTooLittle(0, 0, 9 * 1_224)).isTrue();
        assertThat(held.isTooLittle(50, 0, 9 * 1_224)).isFalse();
    }

    /** Two kinds that hold nearly alike for their money: the second holds more by a part in five hundred thousand million million, which no fraction of the machine tells. */
    @Test
    void theDensestIsToldExactly() {
        int dearest = 380_000;
        long each = 200_000_000L;
        long[] price = {50_000, 49_999};
        long[] hold = {50_000 * each + 1, 49_999 * each + 1};
        int[] most = {UNLIMITED_ENOUGH, UNLIMITED_ENOUGH};
        MostHeld held =
                new MostHeld(new int[] {0, 1}, most, price, hold, 1_000 * hold[0], dearest, new Effort(1_000_000_000));
        for (int bars = 7; bars * price[1] <= dearest; bars++)
            assertThat(held.atMost(0, bars * price[1]))
                    .as(bars + " bars of the second kind")
                    .isGreaterThanOrEqualTo(bars * hold[1]);
    }

    private static long[] table(long[] price, long[] hold, int place) {
        long[] best = new long[DEAREST + 1];
        Arrays.fill(best, MostHeld.NONE);
        best[0] = 0;
        for (int cost = 1; cost <= DEAREST; cost++) {
            for (int k = place; k < price.length; k++) {
                if (price[k] <= cost && best[(int) (cost - price[k])] != MostHeld.NONE)
                    best[cost] = Math.max(best[cost], best[(int) (cost - price[k])] + hold[k]);
            }
        }
        return best;
    }
}
