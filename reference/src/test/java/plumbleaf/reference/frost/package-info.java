/** Checks of frost: how deep it goes and how hard it lifts. */
@NullMarked
package plumbleaf.reference.frost;

import org.jspecify.annotations.NullMarked;
