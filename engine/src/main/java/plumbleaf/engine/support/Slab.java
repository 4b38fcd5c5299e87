package plumbleaf.engine.support;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/**
 * The piece of concrete that a plate or a socket is in.
 *
 * @param thickness of the slab
 * @param edge from the post's face to the nearest edge or joint of the slab
 * @param length the longer side of the piece that moves as one, to its joints; zero where nobody measured it
 * @param width the shorter one
 * @param strength f'c
 */
public record Slab(Length thickness, Length edge, Length length, Length width, Stress strength) {
    /** What a slab of unknown mix is taken for. Judgement. */
    public static final Stress USUAL_STRENGTH = Stress.psi(2500);

    public Slab {
        if (thickness.isZero() || !(strength.psi() > 0))
            throw new IllegalArgumentException("A slab needs a thickness and a strength");
    }

    public boolean isMeasured() {
        return !length.isZero() && !width.isZero();
    }
}
