package plumbleaf.engine.takeoff;

/**
 * What a job takes out of the yard.
 *
 * @param mark of the bars or goods there
 * @param count how many of them
 */
public record StockTake(String mark, String item, int count) {}
