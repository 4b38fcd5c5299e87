package plumbleaf.engine.design;

import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.wind.TributaryWind;
import plumbleaf.engine.wind.VelocityPressure;
import plumbleaf.engine.wind.WindTables;

/**
 * How the wind of the fence beside a post was worked out, for the calculation book. Strength level.
 *
 * @param on the post, from half of each bay beside it
 * @param face gross area of that share
 * @param exposureFactor Kz at the top of the fence
 * @param directionality Kd as it stands in q; 1 where the edition has it in the force instead
 * @param velocity q
 * @param gust what multiplies q and Cf: G, and Kd where q has none
 */
public record WindWork(
        TributaryWind on, Area face, double exposureFactor, double directionality, Pressure velocity, double gust) {

    static WindWork of(TributaryWind on, SiteWind site, Length top, WindTables tables) {
        return new WindWork(
                on,
                on.face(),
                VelocityPressure.exposureFactor(site, top, tables),
                VelocityPressure.directionality(site),
                VelocityPressure.at(site, top, tables),
                VelocityPressure.gustAndDirection(site));
    }

    /** The mean coefficient of the share, with the factor of a wall with holes and what the floor on the whole face adds. */
    public double coefficient() {
        return on.coefficient();
    }

    /** Whether the pressure is that of a wall (Figure 29.3-1) rather than of an open screen (Table 29.4-2). */
    public boolean ofWall() {
        return !on.windCase().endsWith(" open");
    }
}
