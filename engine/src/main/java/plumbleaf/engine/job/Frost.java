package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * @param depth how deep the ground freezes, as the authority says it
 * @param source who said so: {@code building office, by phone}
 * @param months in which it may freeze
 */
public record Frost(Length depth, String source, FrostMonths months) {}
