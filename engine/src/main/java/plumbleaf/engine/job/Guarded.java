package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * A stretch of fence beside a drop, as on a retaining wall: there it is a guard.
 *
 * @param drop from the ground people stand on to the lower ground
 * @param dwelling whether it belongs to a house of one or two families, for which codes ask less
 */
public record Guarded(RunStretch at, Length drop, boolean dwelling) {
    /** Whether a post of a run stands in it. */
    public boolean holds(String run, double stationIn) {
        return at.run().equals(run) && at.covers(stationIn, stationIn);
    }
}
