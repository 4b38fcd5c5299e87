/** Checks of connections: walls, welds, wood fasteners. */
@NullMarked
package plumbleaf.reference.connection;

import org.jspecify.annotations.NullMarked;
