package plumbleaf.engine.line;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * One plumb picket.
 *
 * @param station of its edge nearer the run's start
 * @param width as set: the board's, or less when it is ripped
 * @param bottom elevation of its lower end, on its middle
 * @param length on its middle
 */
public record FencePicket(Offset station, Length width, Offset bottom, Length length) {}
