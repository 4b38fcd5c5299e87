package plumbleaf.engine.bars;

/**
 * One piece where it lies in its bar.
 *
 * @param flip turned end for end against the piece before it
 */
public record Cut(String piece, String group, long longPointNm, boolean flip) {}
