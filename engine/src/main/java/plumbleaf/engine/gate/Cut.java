package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Angle;

/**
 * One saw cut at a member's end.
 *
 * @param fromSquare angle of the cut from square, zero or more; 0 is a square cut
 * @param against the id of the member whose face it meets, or {@code open}
 */
public record Cut(Angle fromSquare, String against) {}
