/**
 * Whole jobs, from the job file to every post, leaf and footing, against a second program. Knows jobs and their designs; must not know
 * how any of it is worked out. Read {@link plumbleaf.reference.whole.DesignedJob}, then {@link plumbleaf.reference.whole.SecondProgramCheck}.
 */
@NullMarked
package plumbleaf.reference.whole;

import org.jspecify.annotations.NullMarked;
