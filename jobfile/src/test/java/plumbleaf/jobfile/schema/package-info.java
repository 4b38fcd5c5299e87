/** The published schemas against the readers and writers. */
@NullMarked
package plumbleaf.jobfile.schema;

import org.jspecify.annotations.NullMarked;
