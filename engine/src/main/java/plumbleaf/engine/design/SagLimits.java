package plumbleaf.engine.design;

import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.quantity.Length;

/**
 * What the drop of a latch corner is judged by.
 *
 * @param latch how far the corner may be off in height and still latch
 * @param bite how far the latch may be pulled away from its post and still hold
 * @param eye what the eye notices over the leaf
 * @param release what the corner may fall when the blocks are pulled
 */
public record SagLimits(Length latch, Length bite, Length eye, Length release) {
    /** The eye's limit over a leaf; common practice, no source. */
    private static final Length EYE = Length.inches(0.25);

    /** 1/8 in. at a walk gate of 4 ft, 1/4 in. at a leaf of 8 ft, in proportion to the width; common practice, no source. */
    private static final double RELEASE_PER_WIDTH = 0.125 / 48;

    public static SagLimits of(LatchModel latch, Length width) {
        return new SagLimits(latch.tolerance(), latch.bite(), EYE, width.times(RELEASE_PER_WIDTH));
    }

    /** The narrower of what latch and eye allow after hanging. */
    public Length afterHanging() {
        return latch.compareTo(eye) < 0 ? latch : eye;
    }
}
