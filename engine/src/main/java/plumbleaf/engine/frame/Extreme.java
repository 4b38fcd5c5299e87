package plumbleaf.engine.frame;

/** A place on a member where something is at its most, and all the forces there. */
public record Extreme(double atIn, Internal forces) {}
