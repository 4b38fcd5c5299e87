@NullMarked
package plumbleaf.launcher;

import org.jspecify.annotations.NullMarked;
