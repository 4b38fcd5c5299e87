/**
 * What was asked for: the site, the ground as measured, the runs, the gates, what the user pinned of the builds, what stands there already,
 * the rules and the terms of money. Shaped like the job file. Data only: it knows nothing of how anything is worked out.
 *
 * <p>Every value that may be left out is either filled in by the reader and listed under {@link Assumption}, or is a {@link Stated} that says
 * whether it was said. Read {@link Job}, then {@link Run} and {@link Gate}.
 */
@NullMarked
package plumbleaf.engine.job;

import org.jspecify.annotations.NullMarked;
