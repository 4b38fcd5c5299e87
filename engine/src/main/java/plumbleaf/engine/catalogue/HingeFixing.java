package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;

/**
 * A hinge's plates and what holds them.
 *
 * @param plateHeight along the post
 * @param plateThickness of the plate that stands on the post
 * @param gripLeast thinnest leaf frame it closes on
 * @param gripMost thickest
 */
public record HingeFixing(
        Length plateHeight,
        Length plateThickness,
        Length gripLeast,
        Length gripMost,
        Fastening toPost,
        Fastening toLeaf) {
    /** A plate welded to post and leaf, for tubes of any size: what the maker's sheet of a weld-on hinge leaves to the shop. */
    public static HingeFixing welded(Length height, Length thickness, Length leg) {
        Fastening weld = new Fastening.Welded(leg);
        return new HingeFixing(height, thickness, Length.ZERO, Length.feet(1), weld, weld);
    }
}
