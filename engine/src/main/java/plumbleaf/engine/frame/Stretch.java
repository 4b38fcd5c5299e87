package plumbleaf.engine.frame;

import java.util.List;

/**
 * A stretch of a member between two breaks of its loads, with what its loads and a unit load leave in it at start, middle and end: by Simpson's rule
 * {@code integral of M m dx = L / 6 (M1 m1 + 4 Mm mm + M2 m2)}, exact here, since M is of second degree and m of first.
 *
 * @param lengthIn L
 * @param loads at start, middle and end
 * @param one of the unit load, at the same places
 */
public record Stretch(double lengthIn, List<Internal> loads, List<Internal> one) {
    public Stretch {
        loads = List.copyOf(loads);
        one = List.copyOf(one);
    }
}
