package plumbleaf.engine.support;

import plumbleaf.engine.quantity.Length;

/**
 * A square plate under a post, with an anchor near each corner.
 *
 * @param anchorEdge from an anchor's centre to the plate's edge
 */
public record BasePlate(Length side, Length thickness, Length anchorEdge) {
    /** 8 x 8 x 1/2 in., anchors 1-1/4 in. from its edges. Common practice, no source. */
    public static final BasePlate USUAL = new BasePlate(Length.inches(8), Length.inches(0.5), Length.inches(1.25));

    public BasePlate {
        if (side.isZero() || thickness.isZero() || 2 * anchorEdge.inches() >= side.inches())
            throw new IllegalArgumentException("A base plate needs sides, a thickness, and room between its anchors");
    }

    /** Between two anchors along a side. */
    public Length anchorSpacing() {
        return Length.inches(side.inches() - 2 * anchorEdge.inches());
    }
}
