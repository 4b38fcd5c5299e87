package plumbleaf.engine.gate;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.BoltSize;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Bracket;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.section.Section;

/**
 * What a gate is made of, once everything is picked.
 *
 * @param frame section of every member of the leaf's frame; its depth lies in the plane of the leaf
 * @param bracing what keeps the leaf square besides its corners
 * @param bracket of a frame that is bolted together; says nothing for another
 * @param hingePost section of the hinge post; of a pair, the left one's, seen from outside
 * @param latchPost section of the latch post; of a pair, the right one's
 * @param bolts sizes of bolt that can be had
 * @param right what the right leaf of a pair is made of, where it is not as the left one
 */
public record GateParts(
        Section frame,
        Bracing bracing,
        Joint joint,
        Bracket bracket,
        PostStock hingePost,
        PostStock latchPost,
        HingeModel hinge,
        LatchModel latch,
        Cladding cladding,
        List<BoltSize> bolts,
        Optional<LeafParts> right) {
    /** What one leaf of a pair has of its own. */
    public record LeafParts(Section frame, Bracing bracing, Joint joint, HingeModel hinge, Cladding cladding) {}

    /** With both leaves alike, or but one. */
    public GateParts(
            Section frame,
            Bracing bracing,
            Joint joint,
            Bracket bracket,
            PostStock hingePost,
            PostStock latchPost,
            HingeModel hinge,
            LatchModel latch,
            Cladding cladding,
            List<BoltSize> bolts) {
        this(frame, bracing, joint, bracket, hingePost, latchPost, hinge, latch, cladding, bolts, Optional.empty());
    }

    /** For the right leaf of a pair, which hangs on the post that the left one has at its far side. */
    public GateParts turned() {
        PostStock own = latchPost;
        PostStock far = hingePost;
        LeafParts leaf = right.orElseGet(() -> new LeafParts(frame, bracing, joint, hinge, cladding));
        return new GateParts(
                leaf.frame(),
                leaf.bracing(),
                leaf.joint(),
                bracket,
                own,
                far,
                leaf.hinge(),
                latch,
                leaf.cladding(),
                bolts);
    }

    /** With another tube for the leaf. */
    GateParts framed(Section other) {
        return new GateParts(
                other, bracing, joint, bracket, hingePost, latchPost, hinge, latch, cladding, bolts, right);
    }

    /** With diagonals of the frame's own tube. */
    public GateParts(
            Section frame,
            int braces,
            Joint joint,
            PostStock hingePost,
            PostStock latchPost,
            HingeModel hinge,
            LatchModel latch,
            Cladding cladding,
            List<BoltSize> bolts) {
        this(frame, Bracing.tubes(braces), joint, Bracket.UNKNOWN, hingePost, latchPost, hinge, latch, cladding, bolts);
    }

    /** The size of bolt for a diameter; one that no table lists has a nut as high as it is thick. */
    public BoltSize bolt(Length diameter) {
        for (BoltSize size : bolts) if (size.diameter().equals(diameter)) return size;
        Length hole = diameter.plus(Length.inches(1 / 16.0));
        return BoltSize.ofNoTable(diameter, 10, Length.inches(0.134), hole);
    }

    public GateParts {
        bolts = List.copyOf(bolts);
    }
}
