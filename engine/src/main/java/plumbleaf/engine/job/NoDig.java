package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** A stretch of a run where no hole may be: stations of its two edges, and why. */
public record NoDig(Length from, Length to, String why) {}
