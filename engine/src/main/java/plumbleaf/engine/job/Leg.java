package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * A straight piece of a run, from corner to corner.
 *
 * @param heading of a curve's first chord: of the curve where it begins
 * @param tape how the tape was held, where somebody said
 * @param chord which chord of a curve it is, where it is one
 */
public record Leg(Length length, Heading heading, Stated<Taped> tape, Stated<ArcChord> chord) {
    /** A straight leg whose length is known in plan. */
    public Leg(Length length, Heading heading) {
        this(length, heading, Stated.of(Taped.LEVEL), Stated.open());
    }

    /** How the tape was held; level where nobody said. */
    public Taped taped() {
        return tape.or(Taped.LEVEL);
    }
}
