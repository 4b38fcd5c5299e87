package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LastBarsTest {
    @Test
    void twoBarsByHand() {
        // 6 + 4 and 5 + 3 + 2
        List<int[]> bars = LastBars.fill(new long[] {6, 5, 4, 3, 2}, 2, 10, new Effort(1_000_000));
        assertThat(bars).containsExactly(new int[] {0, 2}, new int[] {1, 3, 4});
    }

    @Test
    void nothingMakesUpTheRestOfASeven() {
        assertThat(LastBars.fill(new long[] {7, 7, 6}, 2, 10, new Effort(1_000_000)))
                .isEmpty();
    }

    @Test
    void asMuchIsWastedAsThereIsToWaste() {
        List<int[]> bars = LastBars.fill(new long[] {7, 6, 3, 2}, 2, 10, new Effort(1_000_000));
        assertThat(bars).containsExactly(new int[] {0, 2}, new int[] {1, 3});
    }

    @Test
    void whetherTheyFitIsAsTryingAllSays() {
        int fits = 0;
        for (int seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            long room = 30L + random.nextInt(30);
            long[] length = new long[9];
            for (int i = 0; i < length.length; i++) length[i] = 3L + random.nextInt((int) room / 2);
            Arrays.sort(length);
            for (int i = 0; i < length.length / 2; i++) {
                long swapped = length[i];
                length[i] = length[length.length - 1 - i];
                length[length.length - 1 - i] = swapped;
            }
            int bars = (int) ((Arrays.stream(length).sum() + room - 1) / room);
            List<int[]> found = LastBars.fill(length, bars, room, new Effort(1_000_000));
            long[] left = new long[bars];
            Arrays.fill(left, room);
            boolean tried = fits(length, 0, left);
            assertThat(!found.isEmpty()).as("seed " + seed).isEqualTo(tried);
            if (!tried) continue;
            fits++;
            List<Integer> cut = new ArrayList<>();
            for (int[] bar : found) {
                long sum = 0;
                for (int piece : bar) {
                    cut.add(piece);
                    sum += length[piece];
                }
                assertThat(sum).isLessThanOrEqualTo(room);
            }
            assertThat(cut).containsExactlyInAnyOrder(0, 1, 2, 3, 4, 5, 6, 7, 8);
        }
        assertThat(fits).isBetween(30, 299);
    }

    private static boolean fits(long[] length, int piece, long[] left) {
        if (piece == length.length) return true;
        for (int bar = 0; bar < left.length; bar++) {
            if (left[bar] < length[piece]) continue;
            left[bar] -= length[piece];
            boolean all = fits(length, piece + 1, left);
            left[bar] += length[piece];
            if (all) return true;
        }
        return false;
    }
}
