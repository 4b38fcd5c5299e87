package plumbleaf.engine.ground;

import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.quantity.Offset;

/**
 * Where a run lies in plan, which is all the ground needs to know of it.
 *
 * @param id of the run
 * @param insideIsLeft whether the inside is on the left of the walk
 */
public record RunLine(String id, PlanLine line, boolean insideIsLeft) {
    /** A distance towards the inside as a distance to the left of the walk. */
    public Offset leftOf(Offset inside) {
        return insideIsLeft ? inside : inside.negated();
    }
}
