package plumbleaf.engine.footing;

import plumbleaf.engine.job.SoilState;
import plumbleaf.engine.quantity.Pressure;

/**
 * What is presumed of clay or silt by how firm it is.
 *
 * @param undrained su, undrained shear strength
 */
public record ClayFeel(SoilState state, Pressure undrained, String source) {}
