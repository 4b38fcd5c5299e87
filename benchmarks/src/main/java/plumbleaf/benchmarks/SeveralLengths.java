package plumbleaf.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import plumbleaf.engine.bars.StockBar;

/** Classes of lists for bars of several lengths, drawn by seed in the manner of their publications, from memory. */
final class SeveralLengths {
    private static final List<Integer> THREE = List.of(100, 120, 150);
    private static final List<Integer> FIVE = List.of(60, 80, 100, 120, 150);

    private SeveralLengths() {}

    /** M. Monaci, Algorithms for packing and scheduling problems (doctoral thesis, Bologna 2002): three or five lengths at the length as price, pieces of 1, 20 or 50 to 100. */
    static CutList monaci(Random random) {
        List<StockBar> bars = new ArrayList<>();
        for (int length : random.nextBoolean() ? THREE : FIVE) bars.add(CutList.bar("b" + length, length, length));
        return new CutList(pieces(random, CutList.oneOf(random, 25, 50, 100, 200, 500)), bars);
    }

    /** T. G. Crainic, G. Perboli, W. Rei and R. Tadei, Computers and Operations Research 38 (2011) 1474-1482: the same at prices by a root of the length or a little off it. */
    static CutList crainic(Random random) {
        int pricing = random.nextInt(3);
        List<StockBar> bars = new ArrayList<>();
        for (int length : random.nextBoolean() ? THREE : FIVE) {
            double price = switch (pricing) {
                case 0 -> 100 * Math.sqrt(length);
                case 1 -> 10 * length * (0.85 + 0.3 * random.nextDouble());
                default -> 100 * Math.pow(length, 0.8);
            };
            bars.add(CutList.bar("b" + length, length, (long) price));
        }
        return new CutList(pieces(random, CutList.oneOf(random, 25, 50, 100, 200, 500)), bars);
    }

    /** I. Correia, L. Gouveia and F. Saldanha da Gama, Computers and Operations Research 35 (2008) 2103-2113: up to twelve lengths at the root of the length, to 1,000 pieces. */
    static CutList correia(Random random) {
        int pieces = CutList.oneOf(random, 100, 200, 500, 1000);
        int kinds = CutList.oneOf(random, 3, 7, 12);
        List<StockBar> bars = new ArrayList<>();
        for (int k = 0; k < kinds; k++) {
            int length = 100 + 50 * k / (kinds - 1);
            bars.add(CutList.bar("b" + k, length, (long) (100 * Math.sqrt(length))));
        }
        return new CutList(pieces(random, pieces), bars);
    }

    /** G. Belov and G. Scheithauer, EJOR 141 (2002) 274-294: two to eight lengths of half a bar to a bar of 10,000, the length as price; ten to forty sizes, 1 to 100 of each. */
    static CutList belov(Random random) {
        int longest = 10_000;
        int sizes = CutList.oneOf(random, 10, 20, 40);
        int kinds = CutList.oneOf(random, 2, 4, 8);
        double least = CutList.oneOf(random, 0.001, 0.05, 0.15);
        double most = CutList.oneOf(random, 0.2, 0.3, 0.5);
        TreeSet<Integer> lengths = new TreeSet<>(List.of(longest));
        while (lengths.size() < kinds) lengths.add(longest / 2 + random.nextInt(longest / 2));
        List<StockBar> bars = new ArrayList<>();
        for (int length : lengths) bars.add(CutList.bar("b" + length, length, length));
        List<Long> pieces = new ArrayList<>();
        for (int n = 0; n < sizes; n++) {
            long size = (long) (longest * (least + (most - least) * random.nextDouble()));
            for (int count = 1 + random.nextInt(100); count > 0; count--) pieces.add(size);
        }
        return new CutList(pieces, bars);
    }

    private static List<Long> pieces(Random random, int pieces) {
        return CutList.between(CutList.oneOf(random, 1, 20, 50), 100, pieces, random);
    }
}
