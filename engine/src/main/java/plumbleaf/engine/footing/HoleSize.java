package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Length;

/**
 * A round hole filled with concrete.
 *
 * @param depth from finished grade, on a slope from its lower side, to the underside of the concrete
 */
public record HoleSize(Length diameter, Length depth) {
    public HoleSize {
        if (diameter.isZero() || depth.isZero())
            throw new IllegalArgumentException("A hole needs a diameter and a depth");
    }

    public HoleSize deeperBy(Length more) {
        return new HoleSize(diameter, depth.plus(more));
    }
}
