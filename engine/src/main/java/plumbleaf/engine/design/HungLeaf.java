package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HungGate;

/**
 * A leaf as it hangs: its sag, and the forces in every case.
 *
 * @param limits what the drop is judged by
 * @param post id of the post it hangs on
 * @param latchPost id of the post it latches to; a leaf of a pair latches to the other leaf
 */
public record HungLeaf(
        HungGate gate,
        GateSag sag,
        SagLimits limits,
        List<CaseForces> cases,
        List<HingeUse> hinges,
        String post,
        Optional<String> latchPost) {
    public HungLeaf {
        cases = List.copyOf(cases);
        hinges = List.copyOf(hinges);
    }

    /** Id of the leaf. */
    public String id() {
        return gate.leaf().id();
    }
}
