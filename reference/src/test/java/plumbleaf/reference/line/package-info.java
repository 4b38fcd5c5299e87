/** The fence line against closed forms, exhaustion and re-measurement from what would be drawn. */
@NullMarked
package plumbleaf.reference.line;

import org.jspecify.annotations.NullMarked;
