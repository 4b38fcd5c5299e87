package plumbleaf.engine.design;

/** A link of the load path and how much of it is used: 1 is all. */
public record LinkUse(String link, String part, double utilisation) {}
