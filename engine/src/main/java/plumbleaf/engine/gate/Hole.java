package plumbleaf.engine.gate;

import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;

/**
 * A drill centre on a member's centreline.
 *
 * @param what what goes through: {@code nailer bolt}, {@code hinge 1}
 * @param fromDatum along the member from the long point of its first end (at the hinge or the bottom)
 * @param diameter left open where the part that goes through decides
 */
public record Hole(String what, Length fromDatum, Stated<Length> diameter) {}
