/** Checks of section properties. */
@NullMarked
package plumbleaf.reference.section;

import org.jspecify.annotations.NullMarked;
