/** The numbers that the guide prints, worked out again. */
@NullMarked
package plumbleaf.reference.guide;

import org.jspecify.annotations.NullMarked;
