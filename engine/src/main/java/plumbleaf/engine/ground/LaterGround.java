package plumbleaf.engine.ground;

import plumbleaf.engine.quantity.Length;

/** Ground that will rise: on which run, from and to which stations, by how much, and why. */
public record LaterGround(String run, Length from, Length to, Length rise, String why) {}
