package plumbleaf.engine.wind;

/**
 * How much a return corner shelters the first strip.
 *
 * @param ratio length of the return over s
 */
public record ReturnRow(double ratio, double factor) {}
