package plumbleaf.jobfile.cutlist;

import java.util.List;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.Piece;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.bars.StockBar;

/**
 * What is to be cut, and what from.
 *
 * @param name of the list, which stands over its plan
 */
public record CutList(String name, List<Piece> pieces, List<StockBar> bars) {
    private static final char NUMBER_FOLLOWS = '#';

    public CutList {
        pieces = List.copyOf(pieces);
        bars = List.copyOf(bars);
    }

    public CutTask task(SawRules saw) {
        return new CutTask(name, pieces, bars, saw, CutTask.USUAL_STEPS);
    }

    /** One of the pieces that share a mark: each has a name of its own in a plan. */
    static String piece(String mark, int number) {
        return mark + NUMBER_FOLLOWS + number;
    }

    /** The mark of a piece of a plan. */
    public static String markOf(String piece) {
        return piece.substring(0, piece.lastIndexOf(NUMBER_FOLLOWS));
    }
}
