@NullMarked
package plumbleaf.reference.cutting;

import org.jspecify.annotations.NullMarked;
