package plumbleaf.engine.wind;

/**
 * One cell of the table of strips from the windward end.
 *
 * @param aspect B/s of the row
 * @param from start of the strip, in heights s from the windward end
 * @param to its end; without bound where the strip goes on to the far end
 */
public record EndStrip(double aspect, double from, double to, double coefficient) {}
