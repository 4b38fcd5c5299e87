/** Reads published and computed example values from tables: one row an example, with its source and tolerance. */
@NullMarked
package plumbleaf.reference.vectors;

import org.jspecify.annotations.NullMarked;
