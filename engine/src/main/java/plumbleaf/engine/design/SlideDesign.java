package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.sag.SlideGate;
import plumbleaf.engine.sag.SlideSag;

/**
 * How a slide gate is carried.
 *
 * @param cases closed first, then along its way, then open
 * @param frontPost id of the post with the front rollers
 * @param receiverPost id of the post with the receiver
 * @param rearPost id of the post with the rear rollers
 * @param rolling push that keeps the leaf moving on the level, the most along its way
 * @param starting the same where it has been set out of level as far as a crew may
 * @param stop force at a stop that the leaf runs into
 */
public record SlideDesign(
        SlideGate gate,
        List<SlideCase> cases,
        SlideSag sag,
        String frontPost,
        String receiverPost,
        String rearPost,
        Force rolling,
        Force starting,
        Force stop) {
    public SlideDesign {
        cases = List.copyOf(cases);
    }
}
