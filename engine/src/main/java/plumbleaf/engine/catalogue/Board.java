package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;

/**
 * A sawn board or rail as bought, dressed size.
 *
 * @param width its larger face
 * @param species as in the wood tables
 */
public record Board(Length width, Length thickness, String species) {
    public Board {
        if (width.isZero() || thickness.isZero())
            throw new IllegalArgumentException("A board needs a width and a thickness");
    }

    /** Area of its end. */
    public double areaIn2() {
        return width.inches() * thickness.inches();
    }
}
