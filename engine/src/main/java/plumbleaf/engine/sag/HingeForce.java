package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;

/**
 * What a hinge does to the post.
 *
 * @param horizontal in the leaf's plane, + pulls the post towards the latch
 * @param across square to the leaf, + towards its outer face
 * @param down + down
 */
public record HingeForce(String id, Offset z, Force horizontal, Force across, Force down) {}
