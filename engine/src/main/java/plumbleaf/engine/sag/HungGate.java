package plumbleaf.engine.sag;

import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.PostStock;

/**
 * A leaf on its hinges, its post and its footing.
 *
 * @param hinge its stiffness, slack and where its pin stands
 * @param hingePost its depth lies along the run
 * @param hingePostCentre from the post's face at the hinges to its centre
 * @param hingePostHeight above finished grade
 * @param latchPostGrade finished grade at the latch post, from that at the pin, + up
 * @param foot what the hinge post stands in
 * @param opens how far the leaf opens
 * @param holdOpen what holds it there
 * @param shutAt where it is kept while it is closed
 */
public record HungGate(
        Leaf leaf,
        HingeModel hinge,
        PostStock hingePost,
        Length hingePostCentre,
        Length hingePostHeight,
        Offset latchPostGrade,
        PierSprings foot,
        Angle opens,
        HoldOpen holdOpen,
        ShutAt shutAt) {
    /** Whether its hinges hang on a wall and no post carries them. */
    public boolean isOnWall() {
        return foot.likely().match(pier -> false, planes -> false, wall -> true);
    }

    /** Where the post's axis stands: this far from the pin, away from the latch. */
    Length pinToPostAxis() {
        return hinge.pinOffset().plus(hingePostCentre);
    }

    /** Where the pin stands off the closed leaf's middle plane, + towards the viewer outside. */
    public Offset pinAcross() {
        return Offset.inches(Turn.swingSign(leaf.hand()) * hinge.swingOffset().inches());
    }

    /** The same gate on another post, whose own depth tells where its centre lies. */
    public HungGate on(PostStock post) {
        return new HungGate(
                leaf,
                hinge,
                post,
                post.depth().times(0.5),
                hingePostHeight,
                latchPostGrade,
                foot,
                opens,
                holdOpen,
                shutAt);
    }

    /** The same kept elsewhere while it is closed. */
    public HungGate shut(ShutAt at) {
        return new HungGate(
                leaf, hinge, hingePost, hingePostCentre, hingePostHeight, latchPostGrade, foot, opens, holdOpen, at);
    }

    public HungGate in(PierSprings other) {
        return new HungGate(
                leaf,
                hinge,
                hingePost,
                hingePostCentre,
                hingePostHeight,
                latchPostGrade,
                other,
                opens,
                holdOpen,
                shutAt);
    }
}
