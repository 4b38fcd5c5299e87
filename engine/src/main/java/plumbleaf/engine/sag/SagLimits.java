package plumbleaf.engine.sag;

import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.quantity.Length;

/**
 * What the drop after hanging is held against.
 *
 * @param latch how far the latch corner may be off in height and still latch
 * @param latchName of the latch, for the finding
 * @param eye what the eye sees over a leaf
 */
public record SagLimits(Length latch, String latchName, Length eye) {
    /** A quarter inch over the leaf. Common practice, no source. */
    public static final Length EYE = Length.inches(0.25);

    public static SagLimits of(LatchModel latch) {
        return new SagLimits(latch.tolerance(), latch.name(), EYE);
    }

    /** The smaller of the two. */
    public Length least() {
        return latch.compareTo(eye) < 0 ? latch : eye;
    }
}
