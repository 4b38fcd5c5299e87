/** Checks of fence styles: counts of boards and of chain link, wind on open fences, what stretched fabric does. */
@NullMarked
package plumbleaf.reference.style;

import org.jspecify.annotations.NullMarked;
