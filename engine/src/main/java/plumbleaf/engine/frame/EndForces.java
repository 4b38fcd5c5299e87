package plumbleaf.engine.frame;

/** What the nodes do to the two ends of a member's flexible part, in the member's own axes. */
public record EndForces(Wrench start, Wrench end) {}
