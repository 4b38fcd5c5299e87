package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.Spacing;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Boards across a stretch between two visible edges, edge to edge, so that fence and gate read as one.
 *
 * @param fits whether a gap within the style's range was found, with whole boards or with two end boards ripped alike
 * @param gap the common gap; negative where boards lap in two layers
 * @param boards number of boards
 * @param endWidth width of the first and the last board: the style's own, or less where they are ripped
 */
public record PicketRow(boolean fits, Offset gap, int boards, Length endWidth) {
    /** Rounding of sums of board widths. */
    private static final double ROUNDING_IN = 1e-9;

    /**
     * Whole boards with the common gap nearest to the wanted one, {@code g = (W - n w) / (n - 1)}; where no number of whole boards fits the style's range, the
     * wanted gap with the end boards ripped alike to {@code (W - (n - 2) w - (n - 1) g) / 2}, never narrower than the style allows; else the nearest gap
     * at all, marked as not fitting. Boards that lap are odd in number, so that both ends lie in the layer behind. Source: common practice, no source. Check:
     * PicketRowTest.
     *
     * @param stretch W, edge to edge
     * @param wood a board, with its width w
     * @param spacing wanted, least and greatest gap, and least rip
     */
    public static PicketRow across(Length stretch, Board wood, Spacing spacing) {
        double total = stretch.inches();
        double board = wood.width().inches();
        double wanted = spacing.gap().inches();
        double closest = Math.min(0, spacing.least().inches());
        int most = (int) Math.floor((total + closest) / (board + closest) + ROUNDING_IN);
        int step = spacing.laps() ? 2 : 1;
        PicketRow best = new PicketRow(false, Offset.ZERO, 0, wood.width());
        double bestMiss = Double.POSITIVE_INFINITY;
        for (int boards = 1 + step; boards <= most; boards += step) {
            double gap = (total - boards * board) / (boards - 1);
            double miss = Math.abs(gap - wanted);
            boolean within = gap >= spacing.least().inches() - ROUNDING_IN
                    && gap <= spacing.greatest().inches() + ROUNDING_IN;
            if (within && miss < bestMiss) {
                bestMiss = miss;
                best = new PicketRow(true, new Offset(spacing.laps() ? gap : Math.max(0, gap)), boards, wood.width());
            }
        }
        if (best.fits) return best;
        int odd = spacing.laps() ? 1 - most % 2 : 0;
        for (int boards = most + 2 + odd; boards >= 2; boards -= step) {
            double end = (total - (boards - 2) * board - (boards - 1) * wanted) / 2;
            if (end <= board && end >= spacing.leastRip().inches())
                return new PicketRow(true, spacing.gap(), boards, new Length(end));
        }
        return notFitting(total, wood, spacing);
    }

    private static PicketRow notFitting(double total, Board wood, Spacing spacing) {
        double board = wood.width().inches();
        double wanted = spacing.gap().inches();
        int boards = (int) Math.floor((total + wanted) / (board + wanted));
        if (boards < 2) return new PicketRow(false, Offset.ZERO, 1, new Length(Math.min(total, board)));
        return new PicketRow(false, new Offset((total - boards * board) / (boards - 1)), boards, wood.width());
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
