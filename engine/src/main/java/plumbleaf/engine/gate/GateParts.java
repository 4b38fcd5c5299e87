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
 * @param hingePost section of the hinge post
 * @param latchPost section of the latch post
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
    public GateParts {
        if (braces < 0 || braces > 2) throw new IllegalArgumentException("Braces must be 0 to 2, were " + braces);
    }
}
