package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** A buried line that no locator marks: what it is, where it crosses a run, how wide to stay away on each side. */
public record PrivateLine(String kind, String run, Length station, Length tolerance) {}
