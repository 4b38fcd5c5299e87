package plumbleaf.engine.job;

/** A payment: when it falls due and its share of the total; the last takes what is left. */
public record Stage(String when, double share) {}
