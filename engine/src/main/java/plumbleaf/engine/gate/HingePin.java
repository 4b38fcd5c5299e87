package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Offset;

/**
 * A hinge on the pin axis, r = 0.
 *
 * @param id {@code G1a.h1}, the lowest first
 * @param z of the pin's middle
 * @param carriesWeight whether it is the one that carries the leaf's weight
 */
public record HingePin(String id, Offset z, boolean carriesWeight) {}
