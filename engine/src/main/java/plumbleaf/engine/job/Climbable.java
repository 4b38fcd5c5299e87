package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** Something outside a barrier that can be climbed, and how far it stands from the fence: a tree, a wall, a heat pump. */
public record Climbable(String what, String run, Length station, Length away) {}
