package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.quantity.Length;

/**
 * Boards across a stretch between two visible edges, edge to edge, so that fence and gate read as one.
 *
 * @param fits whether a gap within the style's range was found, with whole boards or with two end boards ripped alike
 * @param gap the common gap
 * @param boards number of boards
 * @param endWidth width of the first and the last board: the style's own, or less where they are ripped
 */
public record PicketRow(boolean fits, Length gap, int boards, Length endWidth) {
    /** Rounding of sums of board widths. */
    private static final double ROUNDING_IN = 1e-9;

    /**
     * Whole boards with the common gap nearest to the wanted one, {@code g = (W - n w) / (n - 1)}; where no number of whole boards fits the style's range, the
     * wanted gap with the end boards ripped alike to {@code (W - (n - 2) w - (n - 1) g) / 2}, never narrower than the style allows; else the nearest gap
     * at all, marked as not fitting. Source: common practice, no source. Check: PicketRowTest.
     *
     * @param stretch W, edge to edge
     * @param style with board width w, wanted, least and greatest gap, and least rip
     */
    public static PicketRow across(Length stretch, FenceStyle style) {
        double total = stretch.inches();
        double board = style.boardWidth().inches();
        double wanted = style.gap().inches();
        int most = (int) Math.floor(total / board + ROUNDING_IN);
        PicketRow best = new PicketRow(false, Length.ZERO, 0, style.boardWidth());
        double bestMiss = Double.POSITIVE_INFINITY;
        for (int boards = 2; boards <= most; boards++) {
            double gap = (total - boards * board) / (boards - 1);
            double miss = Math.abs(gap - wanted);
            boolean within = gap >= style.leastGap().inches() - ROUNDING_IN
                    && gap <= style.greatestGap().inches() + ROUNDING_IN;
            if (within && miss < bestMiss) {
                bestMiss = miss;
                best = new PicketRow(true, new Length(Math.max(0, gap)), boards, style.boardWidth());
            }
        }
        if (best.fits) return best;
        for (int boards = most + 2; boards >= 2; boards--) {
            double end = (total - (boards - 2) * board - (boards - 1) * wanted) / 2;
            if (end <= board && end >= style.leastRip().inches())
                return new PicketRow(true, style.gap(), boards, new Length(end));
        }
        return notFitting(total, board, wanted, style);
    }

    private static PicketRow notFitting(double total, double board, double wanted, FenceStyle style) {
        int boards = (int) Math.floor((total + wanted) / (board + wanted));
        if (boards < 2) return new PicketRow(false, Length.ZERO, 1, new Length(Math.min(total, board)));
        return new PicketRow(false, new Length((total - boards * board) / (boards - 1)), boards, style.boardWidth());
    }

    /** Distance of each board's first edge from the beginning of the stretch. */
    public List<Length> edges(Length board) {
        List<Length> edges = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < boards; i++) {
            edges.add(new Length(at));
            at += widthOf(i, board).inches() + gap.inches();
        }
        return List.copyOf(edges);
    }

    /** Width of a board, counted from 0. */
    public Length widthOf(int index, Length board) {
        return index == 0 || index == boards - 1 ? endWidth : board;
    }
}
