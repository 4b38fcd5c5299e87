/** The frame solver against printed examples, closed forms and a second program. The rows with their sources are in {@code frame-examples.csv}. */
@NullMarked
package plumbleaf.reference.frame;

import org.jspecify.annotations.NullMarked;
