package plumbleaf.benchmarks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Lists grown from a small core by three pieces at a time that fill a bar. The core, the edges of the Petersen graph, needs four bars where its length is three; with
 * one edge cut in two three bars do. The long piece of the three is such that without the second nothing makes up its rest, so that whether whole bars do is as it
 * was with the core; where no such three are found all lengths are doubled.
 * Source: M. Delorme, M. Iori and S. Martello, EJOR 255 (2016) 1-20, the augmented classes without and with the integer round-up property; A. Caprara and others,
 * INFORMS Journal on Computing 27 (2015), for the core; from memory, and how the three are chosen is ours.
 */
final class GrownLists {
    private static final String PETERSEN = "01 12 23 34 40 05 16 27 38 49 57 79 96 68 85";
    private static final int EDGES = 15;
    private static final int CORNERS = 10;
    private static final int TRIES = 20;

    private final Random random;
    private int bar;
    private List<Long> lengths = List.of();

    private GrownLists(Random random) {
        this.random = random;
    }

    /** One bar more is needed than the lengths fill. */
    static CutList oneBarMore(int pieces, Random random) {
        GrownLists grown = new GrownLists(random);
        grown.core();
        grown.grow(pieces);
        return CutList.ofOneBar(grown.bar, grown.lengths);
    }

    /** Every bar is full. */
    static CutList everyBarFull(int pieces, Random random) {
        GrownLists grown = new GrownLists(random);
        do {
            grown.core();
            int edge = random.nextInt(EDGES);
            long first = 1 + (long) (random.nextDouble() * (grown.lengths.get(edge) - 1));
            grown.lengths.add(grown.lengths.get(edge) - first);
            grown.lengths.set(edge, first);
        } while (grown.lengths.contains(0L) || !grown.wholeBarsDo());
        grown.grow(pieces);
        return CutList.ofOneBar(grown.bar, grown.lengths);
    }

    /** Edges as long as their two corners, each corner in three of them; drawn until three bars do not hold them. */
    private void core() {
        long[] corner = new long[CORNERS];
        do {
            bar = 150 + random.nextInt(600);
            long left = bar;
            for (int i = 0; i < CORNERS - 1; i++) {
                corner[i] = (long) Math.exp(random.nextDouble() * Math.log(bar / 2.0));
                left -= corner[i];
            }
            corner[CORNERS - 1] = left;
            lengths = new ArrayList<>(Stream.of(PETERSEN.split(" ", -1))
                    .map(edge -> corner[edge.charAt(0) - '0'] + corner[edge.charAt(1) - '0'])
                    .toList());
        } while (corner[CORNERS - 1] < 1 || lengths.stream().anyMatch(each -> each >= bar) || wholeBarsDo());
    }

    private boolean wholeBarsDo() {
        List<Integer> full = new ArrayList<>();
        for (int set = 1; set < 1 << lengths.size(); set++) {
            long sum = 0;
            for (int i = 0; i < lengths.size(); i++) if ((set >> i & 1) == 1) sum += lengths.get(i);
            if (sum == bar) full.add(set);
        }
        return takeAll(full, 0);
    }

    private boolean takeAll(List<Integer> full, int taken) {
        if (taken == (1 << lengths.size()) - 1) return true;
        int next = Integer.lowestOneBit(~taken);
        for (int set : full) {
            if ((set & next) != 0 && (set & taken) == 0 && takeAll(full, taken | set)) return true;
        }
        return false;
    }

    private void grow(int pieces) {
        int from = (bar + 1) / 2;
        while (lengths.size() < pieces) {
            BitSet made = made();
            int at = from;
            while (at <= bar / 10 * 9 && !threeFrom(at, made)) at++;
            from = at;
            if (at <= bar / 10 * 9) continue;
            bar *= 2;
            lengths.replaceAll(each -> 2 * each);
            from = bar / 2;
        }
    }

    private boolean threeFrom(int longest, BitSet made) {
        int rest = bar - longest;
        for (int tries = 0; tries < TRIES && rest > 1 && !made.get(rest); tries++) {
            int third = 1 + random.nextInt(Math.max(1, rest / 5));
            if (third == rest || made.get(rest - third)) continue;
            lengths.addAll(List.of((long) longest, (long) rest - third, (long) third));
            return true;
        }
        return false;
    }

    /** What can be laid together of the pieces under half a bar. */
    private BitSet made() {
        BitSet made = new BitSet();
        made.set(0);
        for (long each : lengths) {
            if (each * 2 >= bar) continue;
            int length = (int) each;
            for (int sum = made.previousSetBit(bar - length); sum >= 0; sum = made.previousSetBit(sum - 1))
                made.set(sum + length);
        }
        return made;
    }
}
