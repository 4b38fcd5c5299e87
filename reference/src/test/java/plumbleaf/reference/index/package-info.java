@NullMarked
package plumbleaf.reference.index;

import org.jspecify.annotations.NullMarked;
