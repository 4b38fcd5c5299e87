package plumbleaf.engine.ground;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A stretch of a straight walk over the surface on which the ground is straight too.
 *
 * @param from distance along the walk where it begins
 * @param to distance where it ends
 * @param start height where it begins
 * @param end height where it ends; beyond the shots the next piece may begin at another height
 * @param extrapolated whether it lies outside the shots
 */
public record SurfacePiece(Length from, Length to, Offset start, Offset end, boolean extrapolated) {}
