package plumbleaf.engine.sag;

import java.util.List;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Moment;

/**
 * What is inside a member of the leaf's frame where its two bendings together strain it most.
 *
 * @param axial + in tension
 * @param shear both directions as one
 * @param inPlane bends it in the leaf's plane (in its depth), without sign
 * @param outOfPlane bends it out of that plane, without sign
 * @param torsion without sign
 * @param ends the same at its first and its last end, where it is joined
 */
public record MemberForce(
        String member, Force axial, Force shear, Moment inPlane, Moment outOfPlane, Moment torsion, List<End> ends) {
    public MemberForce {
        ends = List.copyOf(ends);
    }

    /** As strength checks take it: pressed along, or pulled and then counted as nothing. */
    public BaseAction asAction() {
        return new BaseAction(
                Force.pounds(Math.max(0, -axial.pounds())), shear, Force.ZERO, inPlane, outOfPlane, torsion);
    }

    /** What a member brings to its joint. */
    public record End(Force axial, Force shear, Moment inPlane, Moment outOfPlane, Moment torsion) {}
}
