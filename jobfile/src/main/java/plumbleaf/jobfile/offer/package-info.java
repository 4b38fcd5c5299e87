/**
 * The options of a job, each made into a job of its own and designed.
 *
 * <p>Read {@link plumbleaf.jobfile.offer.Offers}.
 */
@NullMarked
package plumbleaf.jobfile.offer;

import org.jspecify.annotations.NullMarked;
