package plumbleaf.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.bars.Supply;
import plumbleaf.engine.money.Money;

/**
 * Three hundred pieces in twenty sizes of 8 to 120 in., from 20 ft bars with an eighth of an inch of kerf and half an inch off the mill end. Seeded.
 *
 * @param sizesNm one a size
 * @param counts pieces of each
 */
record CutSample(List<Long> sizesNm, List<Integer> counts) {
    static final int LISTS = 10;
    static final int SIZES = 20;
    static final int PIECES = 300;
    static final long SIXTEENTH_NM = 1_587_500;
    static final long BAR_NM = 240 * 16 * SIXTEENTH_NM;
    static final SawRules SAW = new SawRules(2 * SIXTEENTH_NM, 8 * SIXTEENTH_NM, 12 * 16 * SIXTEENTH_NM);

    private static final int SHORTEST_SIXTEENTHS = 8 * 16;
    private static final int LONGEST_SIXTEENTHS = 120 * 16;
    private static final long BAR_CENTS = 5400;

    static CutSample of(int seed) {
        Random random = new Random(seed);
        List<Long> sizes = new ArrayList<>();
        while (sizes.size() < SIZES) {
            long size = SIXTEENTH_NM * (SHORTEST_SIXTEENTHS + random.nextInt(LONGEST_SIXTEENTHS - SHORTEST_SIXTEENTHS));
            if (!sizes.contains(size)) sizes.add(size);
        }
        int[] counts = new int[SIZES];
        for (int piece = 0; piece < PIECES; piece++) counts[piece < SIZES ? piece : random.nextInt(SIZES)]++;
        List<Integer> listed = new ArrayList<>();
        for (int count : counts) listed.add(count);
        return new CutSample(List.copyOf(sizes), List.copyOf(listed));
    }

    CutTask task() {
        List<Piece> pieces = new ArrayList<>();
        for (int size = 0; size < sizesNm.size(); size++)
            for (int nth = 0; nth < counts.get(size); nth++)
                pieces.add(Piece.square("m" + size + "." + nth, "G1a", sizesNm.get(size)));
        StockBar bar = new StockBar("20 ft", BAR_NM, Money.cents(BAR_CENTS), Supply.asMany(), false);
        return new CutTask("tube", pieces, List.of(bar), SAW, CutTask.USUAL_STEPS);
    }
}
