package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Length;

/** One kind of weld at a joint, and its whole length. */
public record Weld(String joint, WeldKind kind, Length length, String where) {}
