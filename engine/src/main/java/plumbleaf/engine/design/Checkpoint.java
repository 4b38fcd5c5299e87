package plumbleaf.engine.design;

/**
 * One check of a part and how much of it is used: 1 is all.
 *
 * @param check {@code bending}, {@code footing}, {@code deflection}
 */
public record Checkpoint(String check, double utilisation) {}
