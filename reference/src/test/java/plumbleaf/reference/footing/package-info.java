/** Checks of footings: depth, springs, soil, concrete. */
@NullMarked
package plumbleaf.reference.footing;

import org.jspecify.annotations.NullMarked;
