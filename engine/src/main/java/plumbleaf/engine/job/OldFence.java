package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** A fence to be taken out: what it is, how long, its post pitch, whether its posts stand in concrete. */
public record OldFence(String kind, Length length, Length pitch, boolean concrete) {}
