package plumbleaf.engine.ground;

import plumbleaf.engine.quantity.Offset;

/** A setup of the level with its height of instrument: the height of its line of sight over the benchmark's zero. */
public record StandingLevel(String setup, Offset heightOfInstrument) {}
