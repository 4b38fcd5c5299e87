package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.support.PullTest;

/**
 * A new post of the site pulled once its concrete had set: it tells of the ground for all the others.
 *
 * @param post its section
 * @param depth of its footing
 */
public record FirstPull(PullTest pull, String post, Length depth) {}
