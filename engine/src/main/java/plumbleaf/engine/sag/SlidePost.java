package plumbleaf.engine.sag;

import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.PostStock;

/**
 * A post of a slide gate: one of the two that carry its rollers, or the one with the receiver.
 *
 * @param at r of its centre
 * @param height above its own grade
 * @param grade there, from grade at the opening's face, + up
 * @param foot what it stands in
 * @param pushes of the fence beside it
 */
public record SlidePost(
        PostStock stock, Offset at, Length height, Offset grade, PierSprings foot, List<PostPush> pushes) {
    public SlidePost {
        pushes = List.copyOf(pushes);
    }
}
