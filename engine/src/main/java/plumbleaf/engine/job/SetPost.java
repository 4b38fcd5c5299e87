package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** A post that has been staked out and stays where it is. */
public record SetPost(String id, Length station) {}
