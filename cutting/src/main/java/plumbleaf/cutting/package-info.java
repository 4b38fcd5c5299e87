@NullMarked
package plumbleaf.cutting;

import org.jspecify.annotations.NullMarked;
