@NullMarked
package plumbleaf.reference.takeoff;

import org.jspecify.annotations.NullMarked;
