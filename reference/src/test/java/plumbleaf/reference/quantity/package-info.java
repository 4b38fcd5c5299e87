/** Quantities against published conversion factors. */
@NullMarked
package plumbleaf.reference.quantity;

import org.jspecify.annotations.NullMarked;
