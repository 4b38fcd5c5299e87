/** Whole jobs read from their files and designed: what must hold of every design, whatever the job. */
@NullMarked
package plumbleaf.jobfile.design;

import org.jspecify.annotations.NullMarked;
