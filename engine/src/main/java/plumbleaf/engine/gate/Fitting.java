package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Force;

/** A piece of hardware that hangs on the leaf, as a point weight. */
public record Fitting(String what, Place at, Force weight) {}
