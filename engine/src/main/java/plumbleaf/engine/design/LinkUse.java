package plumbleaf.engine.design;

/**
 * A link of the load path and how much of it is used: 1 is all.
 *
 * @param inCase the case that uses it most
 * @param work how it was worked out
 */
public record LinkUse(String link, String part, double utilisation, String inCase, LinkWork work) {}
