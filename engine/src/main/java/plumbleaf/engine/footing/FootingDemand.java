package plumbleaf.engine.footing;

import java.util.List;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.quantity.Length;

/**
 * What a footing must do.
 *
 * @param part the footing, {@code F7}
 * @param actions every combination at grade
 * @param halfInchDoesNoHarm whether half an inch of movement at grade hurts nothing, which doubles the lateral value; never at a hinge post
 * @param slabAtGrade whether a slab holds it at grade and can take the reaction
 * @param forDrop depth that keeps a gate's drop within its limit in soft soil; zero where none hangs on it
 */
public record FootingDemand(
        String part, List<CombinedAction> actions, boolean halfInchDoesNoHarm, boolean slabAtGrade, Length forDrop) {
    public FootingDemand {
        actions = List.copyOf(actions);
    }
}
