package plumbleaf.engine.sag;

import java.util.List;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;

/**
 * The forces of one load case.
 *
 * @param angle open angle of the leaf
 * @param hinges from the lowest up
 * @param hingePost what the hinge post brings to grade, in the gate's axes: along + towards the latch, across + outward
 * @param latchPost what the latch and the fence beside it do to the latch post
 * @param hold what the latch, rod or stop pushes the leaf with, + towards its outer face
 * @param members of the leaf's frame, in their order
 */
public record CaseForces(
        Combination combination,
        LeafState state,
        Angle angle,
        WindWay wind,
        List<HingeForce> hinges,
        BaseAction hingePost,
        BaseAction latchPost,
        Force hold,
        List<MemberForce> members) {
    public CaseForces {
        hinges = List.copyOf(hinges);
        members = List.copyOf(members);
    }

    /** What the hinges of the closed leaf carry in still air, and nothing else. */
    public static CaseForces ofHinges(Combination combination, List<HingeForce> hinges) {
        return new CaseForces(
                combination,
                LeafState.CLOSED,
                Angle.ZERO,
                WindWay.NONE,
                hinges,
                BaseAction.NONE,
                BaseAction.NONE,
                Force.ZERO,
                List.of());
    }

    /** The same case with another push of whatever holds the leaf. */
    public CaseForces heldBy(Force other) {
        return new CaseForces(combination, state, angle, wind, hinges, hingePost, latchPost, other, members);
    }

    /** What the hinge post brings to its footing, under the name of its case. */
    public CombinedAction onHingePost() {
        return new CombinedAction(combination, state.key(), wind.key(), hingePost);
    }

    /** What the latch post brings to its footing, under the name of its case. */
    public CombinedAction onLatchPost() {
        return new CombinedAction(combination, state.key(), wind.key(), latchPost);
    }
}
