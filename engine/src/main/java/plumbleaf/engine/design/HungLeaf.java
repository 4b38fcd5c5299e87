package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HungGate;

/**
 * A leaf as it hangs: its sag, and the forces in every case.
 *
 * @param limits what the drop is judged by
 */
public record HungLeaf(HungGate gate, GateSag sag, SagLimits limits, List<CaseForces> cases, List<HingeUse> hinges) {
    public HungLeaf {
        cases = List.copyOf(cases);
        hinges = List.copyOf(hinges);
    }
}
