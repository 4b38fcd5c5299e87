package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** A clearance over the ground, + clear and - struck, where on the leaf, and at which open angle. */
public record Clearance(Offset clear, Length atRadius, Angle atAngle) {}
