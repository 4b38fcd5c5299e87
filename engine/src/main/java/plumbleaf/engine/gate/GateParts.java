package plumbleaf.engine.gate;

import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.section.Section;

/**
 * What a gate is made of, once everything is picked.
 *
 * @param frame section of every member of the leaf's frame; its depth lies in the plane of the leaf
 * @param braces diagonals, 0 to 2
 * @param hingePost section of the hinge post; of a pair, the left one's, seen from outside
 * @param latchPost section of the latch post; of a pair, the right one's
 */
public record GateParts(
        Section frame,
        int braces,
        Joint joint,
        Section hingePost,
        Section latchPost,
        HingeModel hinge,
        LatchModel latch,
        Cladding cladding) {
    /** For the right leaf of a pair, which hangs on the post that the left one has at its far side. */
    public GateParts turned() {
        Section own = latchPost;
        Section far = hingePost;
        return new GateParts(frame, braces, joint, own, far, hinge, latch, cladding);
    }

    public GateParts {
        if (braces < 0 || braces > 2) throw new IllegalArgumentException("Braces must be 0 to 2, were " + braces);
    }
}
