package plumbleaf.engine.takeoff;

/** A part of the job, and how much of a line it is the cause of. */
public record Cause(String part, double quantity) {}
