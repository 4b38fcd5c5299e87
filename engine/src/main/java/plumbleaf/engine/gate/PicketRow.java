package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.quantity.Length;

/**
 * Boards across a stretch between two visible edges, edge to edge.
 *
 * @param fits whether a gap within the style's range was found
 * @param gap the common gap
 * @param boards number of boards
 * @param endWidth width of the first and the last board: the style's own, or less where they are ripped alike
 */
record PicketRow(boolean fits, Length gap, int boards, Length endWidth) {
    /**
     * Whole boards with a common gap within the style's range, nearest to the wanted gap; where no number of whole boards fits, the wanted gap with the two
     * end boards ripped alike, never narrower than the style allows; else the nearest gap at all, marked as not fitting.
     */
    static PicketRow across(Length stretch, FenceStyle style) {
        double total = stretch.inches();
        double board = style.boardWidth().inches();
        PicketRow best = new PicketRow(false, Length.ZERO, 0, style.boardWidth());
        double bestMiss = Double.POSITIVE_INFINITY;
        int most = (int) Math.floor(total / board) + 1;
        for (int boards = 2; boards <= most; boards++) {
            double gap = (total - boards * board) / (boards - 1);
            double miss = Math.abs(gap - style.gap().inches());
            boolean within = gap >= style.leastGap().inches() - 1e-9
                    && gap <= style.greatestGap().inches() + 1e-9;
            if (within && miss < bestMiss) {
                bestMiss = miss;
                best = new PicketRow(true, Length.inches(Math.max(0, gap)), boards, style.boardWidth());
            }
        }
        if (best.fits) return best;
        double gap = style.gap().inches();
        for (int boards = most + 1; boards >= 2; boards--) {
            double end = (total - (boards - 2) * board - (boards - 1) * gap) / 2;
            if (end <= board && end >= style.leastRip().inches())
                return new PicketRow(true, style.gap(), boards, Length.inches(end));
        }
        int boards = Math.max(1, (int) Math.floor((total + gap) / (board + gap)));
        if (boards == 1) return new PicketRow(false, Length.ZERO, 1, Length.inches(Math.min(total, board)));
        return new PicketRow(false, Length.inches((total - boards * board) / (boards - 1)), boards, style.boardWidth());
    }

    /** Distance of each board's first edge from the stretch's beginning, and its width, in turn. */
    List<double[]> edges(Length board) {
        List<double[]> edges = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < boards; i++) {
            double width = i == 0 || i == boards - 1 ? endWidth.inches() : board.inches();
            edges.add(new double[] {at, width});
            at += width + gap.inches();
        }
        return edges;
    }
}
