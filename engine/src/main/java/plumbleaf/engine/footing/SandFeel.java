package plumbleaf.engine.footing;

import plumbleaf.engine.job.SoilState;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Density;
import plumbleaf.engine.quantity.SoilRate;

/**
 * What is presumed of sand or gravel by how dense it is.
 *
 * @param rate n_h, dry or moist
 * @param rateBelowWater n_h under water
 * @param friction angle of friction, for the expected ultimate
 * @param weight moist unit weight, for the expected ultimate
 */
public record SandFeel(
        SoilState state, SoilRate rate, SoilRate rateBelowWater, Angle friction, Density weight, String source) {}
