package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * What the fence beside it pushes on a gate post with while the wind blows out, at the strength of W; wind the other way turns it round.
 *
 * @param height above grade
 * @param outward towards the viewer
 */
public record PostPush(Length height, Force outward) {}
