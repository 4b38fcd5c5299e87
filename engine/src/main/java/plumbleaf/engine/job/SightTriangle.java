package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A corner or driveway where drivers must see over a fence: two legs from a point, and the height that nothing between them may pass.
 *
 * @param what {@code corner of Elm and Fourth}
 * @param first bearing of one leg, clockwise from north
 * @param second bearing of the other
 * @param height above grade that a fence in it may have
 */
public record SightTriangle(
        String what,
        Offset east,
        Offset north,
        Angle first,
        Length firstLeg,
        Angle second,
        Length secondLeg,
        Length height) {}
