package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** A straight piece of a run, from corner to corner. */
public record Leg(Length length, Heading heading, Taped taped) {}
