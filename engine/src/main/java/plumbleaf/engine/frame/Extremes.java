package plumbleaf.engine.frame;

/** Where a member's bending is at its largest and smallest, and where the two moments together are largest; exact, loads included. */
public record Extremes(Extreme myMost, Extreme myLeast, Extreme mzMost, Extreme mzLeast, Extreme bendingMost) {}
