package plumbleaf.engine.sag;

import java.util.List;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.quantity.Length;

/**
 * The forces of one load case of a slide gate.
 *
 * @param state closed in its receiver, on its way, or open
 * @param travel how far it has moved from its closed place
 * @param front on the front rollers
 * @param rear on the rear ones
 * @param frontPost what its post brings to grade: along + towards the receiver, across + outward
 * @param receiverLowLb what the nose pushes its receiver with at the bottom, + outward
 * @param members of the leaf's frame, in their order
 */
public record SlideCase(
        Combination combination,
        LeafState state,
        Length travel,
        WindWay wind,
        RollerForce front,
        RollerForce rear,
        BaseAction frontPost,
        BaseAction rearPost,
        BaseAction receiverPost,
        double receiverLowLb,
        double receiverHighLb,
        List<MemberForce> members) {
    public SlideCase {
        members = List.copyOf(members);
    }
}
