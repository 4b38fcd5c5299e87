package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Length;

/**
 * A size of hex bolt with coarse threads, its nut and its washers.
 *
 * @param threadsPerInch of the coarse thread
 * @param nut height of the hex nut
 * @param washer thickness of one flat washer
 * @param hole drilled for it in steel
 */
public record BoltSize(Length diameter, int threadsPerInch, Length nut, Length washer, Length hole) {}
