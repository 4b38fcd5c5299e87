/**
 * Who issues papers, read from a small table: {@code name}, {@code address}, {@code phone}, {@code license}, {@code mark} and the sizes of paper.
 *
 * <p>Read {@link plumbleaf.jobfile.letterhead.LetterheadFile}.
 */
@NullMarked
package plumbleaf.jobfile.letterhead;

import org.jspecify.annotations.NullMarked;
