package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/**
 * A drop rod: a round bar that slides in guides on a leaf's meeting stile and stands in a sleeve in the ground.
 *
 * @param yield of its steel, the least that its standard guarantees
 * @param guidePlay of the bar in its guides, both sides together
 * @param sleeve inside diameter of its ground sleeve
 * @param weight with guides and handle
 */
public record RodModel(
        String id,
        String name,
        Length diameter,
        Stress yield,
        Length guidePlay,
        Length sleeve,
        Force weight,
        String source) {
    /** How far its leaf goes each way before the rod bears in guide and sleeve: half of what it is loose in both. Source: geometry. */
    public Length playEachWay() {
        double loose = guidePlay.inches() + Math.max(0, sleeve.inches() - diameter.inches());
        return Length.inches(loose / 2);
    }
}
