package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Boards on wood: upright ones on rails, which a bay of a wood fence and the leaf of its gate have in common, or lying ones, which on a leaf go on upright nailers.
 *
 * @param bothSides whether the boards are by turns on both faces of the rails
 * @param rail what carries them: a rail of the fence, a nailer of the leaf
 * @param fastenersPerCrossing at a crossing of board and rail
 * @param lying whether they lie along the fence, one over the other; then the spacing is up it
 */
public record Boarding(
        Board board,
        Spacing spacing,
        BoardTop top,
        boolean bothSides,
        Board rail,
        int fastenersPerCrossing,
        boolean lying) {
    /** Upright boards. */
    public Boarding(
            Board board, Spacing spacing, BoardTop top, boolean bothSides, Board rail, int fastenersPerCrossing) {
        this(board, spacing, top, bothSides, rail, fastenersPerCrossing, false);
    }

    public Length boardWidth() {
        return board.width();
    }

    public Length boardThickness() {
        return board.thickness();
    }

    public String species() {
        return board.species();
    }

    public Length railWidth() {
        return rail.width();
    }

    public Length railThickness() {
        return rail.thickness();
    }

    public String railSpecies() {
        return rail.species();
    }

    public Offset leastGap() {
        return spacing.least();
    }

    public Offset greatestGap() {
        return spacing.greatest();
    }

    /** Boards over face, layers counted: {@code w / (w + g)}; above 1 where they lap. */
    public double boardsOverFace() {
        double width = board.width().inches();
        return width / (width + spacing.gap().inches());
    }
}
