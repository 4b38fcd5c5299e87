package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

/**
 * Where a hinge's pin stands, and how far the hinge itself turns.
 *
 * @param offset from the face of the post to the pin's centre, along the run
 * @param swingSide from the middle plane of the leaf to the pin's centre, towards the side the leaf swings to; zero for a pin in the leaf's plane
 * @param opens how far the hinge turns before it binds in itself
 */
public record PinPlace(Length offset, Length swingSide, Angle opens) {}
