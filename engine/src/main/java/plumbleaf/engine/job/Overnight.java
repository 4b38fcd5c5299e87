package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** What must stay shut in, or out, overnight while the fence is down, and the temporary fence that does it. */
public record Overnight(String what, Length temporaryFence) {}
