package plumbleaf.engine.design;

import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/**
 * A run's build with what is picked before its posts are placed.
 *
 * @param post section of its own posts
 * @param hole diameter
 * @param depth where the job fixes it
 */
public record PickedRun(String run, Section post, Length hole, Stated<Length> depth) {}
