package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * One plumb board of the infill, or one piece of a steel picket.
 *
 * @param r of its edge nearer the hinge
 * @param n of its middle, across the leaf
 * @param width as set: the board's, or less when it is ripped
 * @param bottom z of its lowest point
 * @param middle z of the middle of its length
 * @param length plumb, on its middle
 * @param longPoint overall, to cut from
 * @param topFromSquare cut of its top from square
 * @param bottomFromSquare cut of its bottom from square
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
        Force dry) {}
