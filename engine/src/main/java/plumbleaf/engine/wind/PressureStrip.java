package plumbleaf.engine.wind;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;

/** A strip of a fence with one pressure on its gross face. */
public record PressureStrip(Length from, Length to, Pressure pressure) {}
