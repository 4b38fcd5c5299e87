package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Offset;

/** A point in plan: east and north of the job's origin. */
public record PlanPoint(Offset east, Offset north) {}
