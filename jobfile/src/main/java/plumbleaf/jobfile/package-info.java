@NullMarked
package plumbleaf.jobfile;

import org.jspecify.annotations.NullMarked;
