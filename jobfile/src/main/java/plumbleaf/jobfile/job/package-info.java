/**
 * The job file: each part of a job with the keys it has in the file, read and written by one class, so that the two stay alike; then
 * the checks that need the whole job.
 *
 * <p>Read {@link plumbleaf.jobfile.job.JobFile}, {@link plumbleaf.jobfile.job.JobReading}, then the forms.
 */
@NullMarked
package plumbleaf.jobfile.job;

import org.jspecify.annotations.NullMarked;
