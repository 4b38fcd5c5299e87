package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Speed;

/**
 * @param person weight that may hang on the latch edge
 * @param serviceGust gust in which the latch must stay engaged
 * @param slamSpeed speed of the latch edge at the stop, from a push by hand
 * @param laterRise how much the ground under the swing may rise later (pavers, sod, mulch)
 * @param shotError how far a measured height may be off
 * @param ice design thickness of the ice on the leaf; zero where the job does not ask for it
 */
public record GateLoads(
        Force person, Speed serviceGust, Speed slamSpeed, Length laterRise, Length shotError, Length ice) {
    /** Without ice. */
    public GateLoads(Force person, Speed serviceGust, Speed slamSpeed, Length laterRise, Length shotError) {
        this(person, serviceGust, slamSpeed, laterRise, shotError, Length.ZERO);
    }
}
