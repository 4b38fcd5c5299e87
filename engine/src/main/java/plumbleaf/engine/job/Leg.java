package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * A straight piece of a run, from corner to corner.
 *
 * @param heading of a curve's first chord: of the curve where it begins
 * @param chord which chord of a curve it is, where it is one
 */
public record Leg(Length length, Heading heading, Taped taped, Stated<ArcChord> chord) {
    public Leg(Length length, Heading heading, Taped taped) {
        this(length, heading, taped, Stated.open());
    }
}
