package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** How high the fence may be, and from which side it is measured. */
public record HeightRule(Length limit, MeasuredFrom from) {}
