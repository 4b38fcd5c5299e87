/** Checks of load combinations. */
@NullMarked
package plumbleaf.reference.action;

import org.jspecify.annotations.NullMarked;
