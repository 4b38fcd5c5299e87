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
 * Pieces and bars of a published class, in its own whole units: without kerf or trim, as many bars as are wanted.
 *
 * @param lengths of the pieces, one each
 * @param bars kinds of bar
 */
record CutList(List<Long> lengths, List<StockBar> bars) {
    CutList {
        lengths = List.copyOf(lengths);
        bars = List.copyOf(bars);
    }

    /** Bars of one length: what counts is how many. */
    static CutList ofOneBar(long bar, List<Long> lengths) {
        return new CutList(lengths, List.of(bar("bar", bar, 100)));
    }

    static StockBar bar(String id, long length, long cents) {
        return new StockBar(id, length, Money.cents(cents), Supply.asMany(), false);
    }

    /** So many lengths, each as likely as any from the least to the most. */
    static List<Long> between(long least, long most, int pieces, Random random) {
        List<Long> lengths = new ArrayList<>();
        for (int n = 0; n < pieces; n++) lengths.add(least + (long) (random.nextDouble() * (most - least + 1)));
        return lengths;
    }

    @SafeVarargs
    static <T> T oneOf(Random random, T... these) {
        return these[random.nextInt(these.length)];
    }

    CutTask task() {
        List<Piece> pieces = new ArrayList<>();
        for (long length : lengths) pieces.add(Piece.square("p" + pieces.size(), "", length));
        return new CutTask("list", pieces, bars, new SawRules(0, 0, 0), CutTask.USUAL_STEPS);
    }
}
