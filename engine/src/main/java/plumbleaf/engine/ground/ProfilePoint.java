package plumbleaf.engine.ground;

import plumbleaf.engine.quantity.Offset;

/** A shot on a run: its station, and the height of the ground there. */
public record ProfilePoint(String shot, Offset station, Offset elevation) {}
