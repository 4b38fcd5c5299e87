package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** A level tape straight across between two stations of a run, to check the corners between them. */
public record CheckTape(Length from, Length to, Length taped) {}
