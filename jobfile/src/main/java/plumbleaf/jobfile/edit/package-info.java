/**
 * A change to a job's file in one line: a path and what stands there now. Remedies, options and alternates are written so. Knows JSON trees, not jobs.
 *
 * <p>Read {@link plumbleaf.jobfile.edit.JobEdit}.
 */
@NullMarked
package plumbleaf.jobfile.edit;

import org.jspecify.annotations.NullMarked;
