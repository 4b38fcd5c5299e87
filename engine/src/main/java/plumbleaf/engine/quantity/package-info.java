/**
 * Lengths, forces and the other measured things, how they are read from what people write, and how they are printed.
 *
 * <p>Knows units and nothing else. Working units: inch, pound-force, psi, radian; psf at the wind boundary. Read {@link
 * plumbleaf.engine.quantity.Length}, then {@link plumbleaf.engine.quantity.LengthText}.
 */
@NullMarked
package plumbleaf.engine.quantity;

import org.jspecify.annotations.NullMarked;
