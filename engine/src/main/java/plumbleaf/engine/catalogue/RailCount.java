package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;

/** Infill up to this height takes so many rails. */
public record RailCount(Length upTo, int count) {}
