package plumbleaf.engine.gate;

import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Bracket;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.section.Section;

/**
 * What a gate is made of, once everything is picked.
 *
 * @param frame section of every member of the leaf's frame; its depth lies in the plane of the leaf
 * @param bracing what keeps the leaf square besides its corners
 * @param bracket of a frame that is bolted together; says nothing for another
 * @param hingePost section of the hinge post; of a pair, the left one's, seen from outside
 * @param latchPost section of the latch post; of a pair, the right one's
 */
public record GateParts(
        Section frame,
        Bracing bracing,
        Joint joint,
        Bracket bracket,
        Section hingePost,
        Section latchPost,
        HingeModel hinge,
        LatchModel latch,
        Cladding cladding) {
    /** For the right leaf of a pair, which hangs on the post that the left one has at its far side. */
    public GateParts turned() {
        Section own = latchPost;
        Section far = hingePost;
        return new GateParts(frame, bracing, joint, bracket, own, far, hinge, latch, cladding);
    }

    /** With diagonals of the frame's own tube. */
    public GateParts(
            Section frame,
            int braces,
            Joint joint,
            Section hingePost,
            Section latchPost,
            HingeModel hinge,
            LatchModel latch,
            Cladding cladding) {
        this(frame, Bracing.tubes(braces), joint, Bracket.UNKNOWN, hingePost, latchPost, hinge, latch, cladding);
    }
}
