package plumbleaf.engine.ground;

import plumbleaf.engine.quantity.Length;

/** A place where the level stood: the rod reading back on the benchmark ({@code on} is {@code benchmark}) or on a shot. */
public record Setup(String id, String on, Length backsight) {}
