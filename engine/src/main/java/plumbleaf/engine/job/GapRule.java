package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** The largest gap allowed under the fence. */
public record GapRule(Length largest, String why) {}
