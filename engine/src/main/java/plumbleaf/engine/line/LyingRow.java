package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.Spacing;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Lying boards up the height of an infill, from its bottom.
 *
 * @param fits whether whole boards, or whole boards with the highest ripped, fill it within the style's gaps
 * @param top width of the highest board
 */
public record LyingRow(boolean fits, int boards, Offset gap, Length top) {
    private static final double ROUNDING_IN = 1e-9;

    /**
     * Whole boards with the gap nearest to the wanted one, {@code g = (H - n w)/(n - 1)}; where none lies in the style's range, the wanted gap with the highest
     * board ripped to {@code H - (n - 1)(w + g)}; else the nearest gap, marked as not fitting. Source: common practice, no source. Check: LyingRowTest.
     *
     * @param height H
     */
    public static LyingRow up(Length height, Board board, Spacing spacing) {
        double h = height.inches();
        double w = board.width().inches();
        double wanted = spacing.gap().inches();
        LyingRow best = new LyingRow(false, 0, Offset.ZERO, board.width());
        double bestMiss = Double.POSITIVE_INFINITY;
        int most = (int) Math.floor(h / Math.min(w, w + spacing.least().inches()) + 1 + ROUNDING_IN);
        for (int boards = 2; boards <= most; boards++) {
            double gap = (h - boards * w) / (boards - 1);
            boolean within = gap >= spacing.least().inches() - ROUNDING_IN
                    && gap <= spacing.greatest().inches() + ROUNDING_IN;
            if (within && Math.abs(gap - wanted) < bestMiss) {
                bestMiss = Math.abs(gap - wanted);
                best = new LyingRow(true, boards, new Offset(gap), board.width());
            }
        }
        if (best.fits) return best;
        int below = (int) Math.floor((h - spacing.leastRip().inches()) / (w + wanted) + ROUNDING_IN);
        double rip = h - below * (w + wanted);
        if (below >= 1 && rip <= w + ROUNDING_IN) return new LyingRow(true, below + 1, spacing.gap(), new Length(rip));
        int boards = Math.max(1, (int) Math.floor((h + wanted) / (w + wanted)));
        double gap = boards == 1 ? 0 : (h - boards * w) / (boards - 1);
        return new LyingRow(false, boards, new Offset(gap), new Length(Math.min(w, h)));
    }

    /** Heights of the boards' middles above the infill's bottom. */
    public List<Length> middles(Length width) {
        List<Length> middles = new ArrayList<>();
        for (int i = 0; i < boards; i++) {
            double own = i == boards - 1 ? top.inches() : width.inches();
            middles.add(Length.inches(i * (width.inches() + gap.inches()) + own / 2));
        }
        return middles;
    }
}
