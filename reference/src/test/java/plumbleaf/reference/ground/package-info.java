/** The ground against a second triangulation and closed forms. */
@NullMarked
package plumbleaf.reference.ground;

import org.jspecify.annotations.NullMarked;
