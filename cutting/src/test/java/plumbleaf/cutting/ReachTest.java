package plumbleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class ReachTest {
    @Test
    void findsAWayWhereThereIsOneAndOnlyThere() {
        Random random = new Random(41);
        for (int round = 0; round < 200; round++) {
            int sizes = 1 + random.nextInt(6);
            long[] size = new TreeSet<>(random.longs(sizes, 1, 90).boxed().toList())
                    .stream().mapToLong(each -> each).toArray();
            int[] left = random.ints(size.length, 0, 4).toArray();
            left[random.nextInt(left.length)] = 1;
            Reach reach = new Reach(size, left, 200, new Effort(Long.MAX_VALUE));
            for (int question = 0; question < 20; question++) {
                long most = random.nextInt(201);
                long least = Math.max(0, most - random.nextInt(4));
                int omitted = random.nextInt(size.length);
                int[] fewer = left.clone();
                fewer[omitted] = 0;
                same(reach.way(least, most, question % 2 == 0), size, left, least, most);
                same(reach.wayWithout(omitted, least, most), size, fewer, least, most);
            }
            int taken = 0;
            while (left[taken] == 0) taken++;
            reach.takeOne(taken);
            left[taken]--;
            assertThat(reach.left(taken)).isEqualTo(left[taken]);
            for (long most = 0; most <= 200; most += 7) same(reach.way(most, most, true), size, left, most, most);
        }
    }

    private static void same(int[] way, long[] size, int[] left, long least, long most) {
        assertThat(way.length > 0).isEqualTo(any(size, left, 0, least, most));
        long sum = 0;
        for (int j = 0; j < way.length; j++) {
            assertThat(way[j]).isBetween(0, left[j]);
            sum += way[j] * size[j];
        }
        if (way.length > 0) assertThat(sum).isBetween(least, most);
    }

    private static boolean any(long[] size, int[] left, int from, long least, long most) {
        if (most < 0) return false;
        if (least <= 0) return true;
        if (from == size.length) return false;
        for (int n = 0; n <= left[from]; n++) {
            if (any(size, left, from + 1, least - n * size[from], most - n * size[from])) return true;
        }
        return false;
    }
}
