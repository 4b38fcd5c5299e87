package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;

/**
 * Weight that lands on a rail, spread evenly over part of its length.
 *
 * @param rail id of the rail
 * @param from r where it begins
 * @param to r where it ends
 * @param n of its centre of gravity
 */
public record RailLoad(String rail, Offset from, Offset to, Offset n, Force wet, Force dry) {}
