package plumbleaf.engine.wind;

import plumbleaf.engine.job.Exposure;
import plumbleaf.engine.job.WindEdition;
import plumbleaf.engine.quantity.Length;

/**
 * How wind grows with height over one kind of terrain: {@code Kz = factor (z / zg)^(2 / alpha)}.
 *
 * @param gradientHeight zg
 */
public record ExposureRow(WindEdition edition, Exposure exposure, double factor, double alpha, Length gradientHeight) {}
