package plumbleaf.engine.design;

import java.util.Optional;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Bracket;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.section.Section;

/**
 * A gate's build with everything picked.
 *
 * @param hingePost of a pair, the left leaf's
 * @param latchPost of a pair, the right leaf's: both are hinge posts
 * @param hole of both posts
 * @param hanging where a search looked for the hinges or their side too; else they are as the job says
 */
public record PickedGate(
        Section frame,
        Bracing bracing,
        Joint joint,
        Bracket bracket,
        PostStock hingePost,
        PostStock latchPost,
        HoleSize hole,
        Optional<Hanging> hanging) {
    PickedGate withDepth(Length depth) {
        return new PickedGate(
                frame, bracing, joint, bracket, hingePost, latchPost, new HoleSize(hole.diameter(), depth), hanging);
    }

    /** Its parts in a fixed order, which also tells builds apart. */
    public String id() {
        return hanging.map(is -> is.id() + " ").orElse("")
                + LeafPick.of(frame, bracing, joint, bracket).id() + " "
                + new FootPick(hingePost, latchPost, hole).id();
    }

    /** On another hinge post. */
    PickedGate on(PostStock post) {
        return new PickedGate(frame, bracing, joint, bracket, post, latchPost, hole, hanging);
    }

    /** Both leaves of a pair on other posts. */
    PickedGate bothOn(PostStock post) {
        return new PickedGate(frame, bracing, joint, bracket, post, post, hole, hanging);
    }

    /** The post a leaf hangs on: of a pair, the left leaf's is the one named first, the right leaf's the other. */
    PostStock postOf(Side hinge, boolean single) {
        return single || hinge == Side.LEFT ? hingePost : latchPost;
    }
}
