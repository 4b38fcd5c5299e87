package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Offset;

/** Where a run begins: east and north from the job's origin. */
public record Start(Offset east, Offset north) {}
