@NullMarked
package plumbleaf.reference;

import org.jspecify.annotations.NullMarked;
