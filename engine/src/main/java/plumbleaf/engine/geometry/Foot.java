package plumbleaf.engine.geometry;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Where a point falls on a line: the station of its foot, and how far off it lies.
 *
 * @param left distance off the line, positive to the left of the walk
 * @param distance straight to the foot, which is more than {@code left} where the foot is at an end or a corner
 */
public record Foot(Length station, Offset left, Length distance) {}
