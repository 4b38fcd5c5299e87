package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/**
 * A drop rod: a round bar that slides in guides on a leaf's meeting stile and stands in a sleeve in the ground.
 *
 * @param yield of its steel, the least that its standard guarantees
 * @param weight with guides and handle
 */
public record RodModel(String id, String name, Length diameter, Stress yield, Force weight, String source) {}
