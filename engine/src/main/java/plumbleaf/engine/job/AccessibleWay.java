package plumbleaf.engine.job;

/**
 * A gate on a way that must be accessible.
 *
 * @param smoothBottom whether its push side is smooth for the lowest 10 in.
 * @param threshold rise in the way under the gate, where there is one
 */
public record AccessibleWay(
        String gate, Stated<Boolean> smoothBottom, Stated<plumbleaf.engine.quantity.Length> threshold) {}
