package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Something in the swing: how far along the run from the hinge, and how far to the swing side. */
public record Obstacle(String what, Offset along, Length side) {}
