package plumbleaf.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Classes of lists for bars of one length, drawn by seed after their published descriptions; the descriptions from memory, so these are lists like the published ones
 * and not those. M. Delorme, M. Iori and S. Martello, BPPLIB, Optimization Letters 12 (2018) 235-250, gathers them.
 */
final class OneLength {
    private OneLength() {}

    /** E. Falkenauer, Journal of Heuristics 2 (1996) 5-30: bars of 150, pieces of 20 to 100. */
    static CutList falkenauerUniform(Random random) {
        return CutList.ofOneBar(150, CutList.between(20, 100, CutList.oneOf(random, 120, 250, 500, 1000), random));
    }

    /** The same: bars of 1,000 cut into three, the first 380 to 490, the second from 250 on. */
    static CutList falkenauerTriplets(Random random) {
        int pieces = CutList.oneOf(random, 60, 120, 249, 501);
        List<Long> lengths = new ArrayList<>();
        while (lengths.size() < pieces) {
            long first = 380L + random.nextInt(111);
            long rest = 1000 - first;
            long second = 250L + random.nextInt((int) (rest / 2 - 250) + 1);
            lengths.addAll(List.of(first, second, rest - second));
        }
        return CutList.ofOneBar(1000, lengths);
    }

    /** A. Scholl, R. Klein and C. Juergens, Computers and Operations Research 24 (1997) 627-645, first set: bars of 100 to 150, pieces from 1, 20 or 30 to 100. */
    static CutList schollFirst(Random random) {
        int pieces = CutList.oneOf(random, 50, 100, 200, 500);
        return CutList.ofOneBar(
                CutList.oneOf(random, 100, 120, 150),
                CutList.between(CutList.oneOf(random, 1, 20, 30), 100, pieces, random));
    }

    /** The same, second set: three to nine pieces to a bar of 1,000, a fifth to nine tenths about the middle. */
    static CutList schollSecond(Random random) {
        int pieces = CutList.oneOf(random, 50, 100, 200, 500);
        double middle = 1000.0 / CutList.oneOf(random, 3, 5, 7, 9);
        double spread = CutList.oneOf(random, 0.2, 0.5, 0.9);
        return CutList.ofOneBar(
                1000,
                CutList.between(
                        (long) Math.ceil(middle * (1 - spread)),
                        (long) Math.floor(middle * (1 + spread)),
                        pieces,
                        random));
    }

    /** The same, third set: two hundred pieces of 20,000 to 35,000 from bars of 100,000. */
    static CutList schollThird(Random random) {
        return CutList.ofOneBar(100_000, CutList.between(20_000, 35_000, 200, random));
    }

    /** P. Schwerin and G. Waescher, ITOR 4 (1997) 377-389: pieces of 150 to 200 from bars of 1,000. */
    static CutList schwerin(Random random) {
        return CutList.ofOneBar(1000, CutList.between(150, 200, CutList.oneOf(random, 100, 120), random));
    }

    /** G. Waescher and T. Gau, OR Spektrum 18 (1996) 131-144: bars of 10,000, 57 to 239 pieces of 20 up to a quarter, a half or three quarters. */
    static CutList waescher(Random random) {
        int pieces = 57 + random.nextInt(183);
        return CutList.ofOneBar(10_000, CutList.between(20, CutList.oneOf(random, 2500, 5000, 7500), pieces, random));
    }

    /** J. E. Schoenfield, Fast, exact solution of open bin packing problems (2002), the hard 28: 160 to 200 pieces of up to 800 that all but fill whole bars of 1,000. */
    static CutList hardlyAnyWaste(Random random) {
        List<Long> lengths = CutList.between(1, 800, 160 + 20 * random.nextInt(3), random);
        int waste = random.nextInt(12);
        long over = (lengths.stream().mapToLong(each -> each).sum() + waste) % 1000;
        for (int n = 0; over > 0; n = (n + 1) % lengths.size()) {
            long less = Math.min(Math.min(over, 1 + random.nextInt(5)), lengths.get(n) - 1);
            lengths.set(n, lengths.get(n) - less);
            over -= less;
        }
        return CutList.ofOneBar(1000, lengths);
    }

    /** M. Delorme, M. Iori and S. Martello, EJOR 255 (2016) 1-20, random class: bars of 50 to 1,000, 50 to 1,000 pieces of a tenth or fifth to seven or eight tenths. */
    static CutList random(Random random) {
        int pieces = CutList.oneOf(random, 50, 100, 200, 300, 400, 500, 750, 1000);
        int bar = CutList.oneOf(random, 50, 75, 100, 120, 125, 150, 200, 300, 400, 500, 750, 1000);
        double least = CutList.oneOf(random, 0.1, 0.2);
        double most = CutList.oneOf(random, 0.7, 0.8);
        return CutList.ofOneBar(
                bar, CutList.between((long) Math.ceil(least * bar), (long) Math.floor(most * bar), pieces, random));
    }

    /** R. F. F. da Silva and R. C. S. Schouery, INFORMS Journal on Computing (2025): bars of 10,000 in three, the first two a fifth to two fifths. */
    static CutList barsOfThree(Random random) {
        int pieces = CutList.oneOf(random, 216, 405);
        List<Long> lengths = new ArrayList<>();
        while (lengths.size() < pieces) {
            long first = 2000L + random.nextInt(2000);
            long second = 2000L + random.nextInt(2000);
            lengths.addAll(List.of(first, second, 10_000 - first - second));
        }
        return CutList.ofOneBar(10_000, lengths);
    }

    /**
     * Bars of three pieces and three bars of five, cut quite at random: no published class, and harder than any, since nothing but the very bars that were cut up, or
     * some few others, will do.
     */
    static CutList cutAtRandom(int bar, int pieces, Random random) {
        List<Long> lengths = new ArrayList<>();
        for (int n = 0; n < 3; n++) cutUp(bar, 5, random, lengths);
        while (lengths.size() < pieces) cutUp(bar, 3, random, lengths);
        return CutList.ofOneBar(bar, lengths);
    }

    private static void cutUp(int bar, int parts, Random random, List<Long> to) {
        long[] cuts = random.ints(1, bar)
                .distinct()
                .limit(parts - 1)
                .asLongStream()
                .sorted()
                .toArray();
        long last = 0;
        for (long cut : cuts) {
            to.add(cut - last);
            last = cut;
        }
        to.add(bar - last);
    }
}
