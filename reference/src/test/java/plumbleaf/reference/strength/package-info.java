/** Checks of members: bending, shear, torsion, compression, the rated gust. */
@NullMarked
package plumbleaf.reference.strength;

import org.jspecify.annotations.NullMarked;
