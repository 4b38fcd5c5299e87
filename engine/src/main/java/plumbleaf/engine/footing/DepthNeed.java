package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Length;

/** A depth that one cause asks for, not rounded. */
public record DepthNeed(DepthCause cause, Length depth) {}
