package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Volume;

/**
 * Ground shaved so that a leaf clears it.
 *
 * @param part the gate, or a leaf of a pair
 * @param soil as it lies, undug
 * @param deepest cut
 */
public record Regrade(String part, Volume soil, Length deepest) {}
