package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** The latch: its model in the catalogue and its height above grade at the latch. */
public record LatchSpec(String model, Length height) {}
