package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * What ice does to a hung leaf.
 *
 * @param thickness of design
 * @param weight of all of it
 * @param drop of the free corner beside that of the dead load, + down
 */
public record IceDrop(Length thickness, Force weight, Offset drop) {}
