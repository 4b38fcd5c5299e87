package plumbleaf.engine.design;

import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.section.PostStock;

/** What a gate's leaves hang on and close against. */
record FootPick(PostStock hingePost, PostStock latchPost, HoleSize hole) {
    String id() {
        return hingePost.id() + " " + latchPost.id() + " "
                + LengthText.inchesOnly(hole.diameter().inches()) + " x "
                + LengthText.inchesOnly(hole.depth().inches());
    }
}
