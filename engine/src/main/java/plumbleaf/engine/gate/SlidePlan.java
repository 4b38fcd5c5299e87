package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A cantilever slide gate worked out in its place.
 *
 * @param leaf with its tail
 * @param rollers set on each roller post
 * @param face of the opening at the front roller post, on the line of the posts: r = 0
 * @param along from there towards the receiver
 * @param outward towards someone outside
 * @param zero elevation of grade at the face: z = 0
 * @param travel the ground under its way
 */
public record SlidePlan(
        GateKind.Slide kind,
        Leaf leaf,
        RollerModel rollers,
        SlideShape shape,
        PlanPoint face,
        Direction along,
        Direction outward,
        Offset zero,
        SlideTravel travel) {
    /** The place in plan under r on the leaf's middle plane while it is closed, so far off it outward. */
    public PlanPoint at(Offset r, Offset outwardOfLeaf) {
        return face.moved(along, r).moved(outward, shape.across().plus(outwardOfLeaf));
    }

    /** Room in the receiver's mouth on the side of its post: as asked, as far as the face of a post of this width leaves it. The other side has all that was asked. */
    public Length mouthToPost(Length receiver) {
        double face =
                Math.abs(shape.across().inches()) - leaf.make().tube().width().inches() / 2 - receiver.inches() / 2;
        return Length.inches(Math.max(0, Math.min(kind.spec().mouthAcross().inches(), face)));
    }

    /** The strip of ground that the leaf needs, corners in order: as wide as the leaf, from the open tail's end to the nose. */
    public List<PlanPoint> envelope(Offset halfWidth) {
        return List.of(
                at(shape.openEnd(), halfWidth),
                at(shape.nose(), halfWidth),
                at(shape.nose(), halfWidth.negated()),
                at(shape.openEnd(), halfWidth.negated()));
    }
}
