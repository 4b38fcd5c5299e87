package plumbleaf.engine.ground;

import plumbleaf.engine.quantity.Offset;

/** A mark that will still be there, and the height it is given. */
public record Benchmark(String mark, Offset elevation) {}
