package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * @param depth how deep the ground freezes, as the authority says it
 * @param source who said so: {@code building office, by phone}
 */
public record Frost(Length depth, String source) {}
