package plumbleaf.engine.frame;

/** A spring between a node and the ground, in global axes at the node, with its couplings: a footing. */
public record GroundSpring(String id, String node, SpringMatrix stiffness) {}
