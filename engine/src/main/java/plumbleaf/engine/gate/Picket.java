package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * One plumb board of the infill, or one piece of a steel picket; or a board that lies across the leaf, then as wide as the leaf and as tall as the board.
 *
 * @param r of its edge nearer the hinge
 * @param n of its middle, across the leaf
 * @param width as set: the board's, or less when it is ripped
 * @param bottom z of its lowest point
 * @param middle z of the middle of its length
 * @param length plumb, on its middle
 * @param longPoint overall, to cut from, along the piece
 * @param topFromSquare cut of its top from square
 * @param bottomFromSquare cut of its bottom from square
 * @param lying whether it lies across the leaf
 */
public record Picket(
        Offset r,
        Offset n,
        Length width,
        Offset bottom,
        Offset middle,
        Length length,
        Length longPoint,
        Angle topFromSquare,
        Angle bottomFromSquare,
        Force wet,
        Force dry,
        boolean lying) {
    /** Of a board that stands. */
    public Picket(
            Offset r,
            Offset n,
            Length width,
            Offset bottom,
            Offset middle,
            Length length,
            Length longPoint,
            Angle topFromSquare,
            Angle bottomFromSquare,
            Force wet,
            Force dry) {
        this(r, n, width, bottom, middle, length, longPoint, topFromSquare, bottomFromSquare, wet, dry, false);
    }

    /** Across the board itself. */
    public Length across() {
        return lying ? length.times(StrictMath.cos(bottomFromSquare.radians())) : width;
    }

    /** Along it. */
    public Length along() {
        return lying ? longPoint : length;
    }
}
