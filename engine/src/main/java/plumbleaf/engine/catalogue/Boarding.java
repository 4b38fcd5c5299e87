package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Upright boards on wood rails: what a bay of a wood fence and the leaf of its gate have in common.
 *
 * @param bothSides whether the boards are by turns on both faces of the rails
 * @param fastenersPerCrossing at a crossing of board and rail
 */
public record Boarding(
        Board board, Spacing spacing, BoardTop top, boolean bothSides, Board rail, int fastenersPerCrossing) {
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
