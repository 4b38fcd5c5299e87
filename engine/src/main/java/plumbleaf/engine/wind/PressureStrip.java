package plumbleaf.engine.wind;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;

/**
 * A strip of a fence with one pressure on its gross face.
 *
 * @param coefficient what q G is multiplied by there: Cf of the table, times the factor of a wall with holes or the solid share of a screen, and raised to the floor
 */
public record PressureStrip(Length from, Length to, Pressure pressure, double coefficient) {}
