package plumbleaf.engine.wind;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Pressure;

/**
 * Wind on the part of a fence that one post or one leaf carries, strength level.
 *
 * @param force resultant
 * @param height of the resultant above ground
 * @param mean pressure on the gross face of that part
 * @param windCase the case that governs
 */
public record TributaryWind(Force force, Length height, Pressure mean, String windCase) {
    /** Moment about ground line: {@code M = F z}. Check: WallWindCheck. */
    public Moment momentAtGrade() {
        return Moment.poundInches(force.pounds() * height.inches());
    }

    /** The same wind at another share, as speeds scale it. */
    public TributaryWind times(double factor) {
        return new TributaryWind(force.times(factor), height, mean.times(factor), windCase);
    }
}
