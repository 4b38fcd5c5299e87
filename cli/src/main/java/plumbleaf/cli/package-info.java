@NullMarked
package plumbleaf.cli;

import org.jspecify.annotations.NullMarked;
