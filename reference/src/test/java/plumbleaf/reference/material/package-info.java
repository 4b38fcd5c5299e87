/** Checks of materials: how wood weighs and moves. */
@NullMarked
package plumbleaf.reference.material;

import org.jspecify.annotations.NullMarked;
