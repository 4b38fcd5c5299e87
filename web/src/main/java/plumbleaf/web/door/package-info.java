/** Signing in, and the making of the first owner. */
@NullMarked
package plumbleaf.web.door;

import org.jspecify.annotations.NullMarked;
