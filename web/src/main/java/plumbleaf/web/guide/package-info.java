/**
 * The guide, served from the jar: the same texts as in docs/guide, set as pages, and searched word by word. Knows no job.
 *
 * <p>Read {@link plumbleaf.web.guide.Guide}, {@link plumbleaf.web.guide.Finding}.
 */
@NullMarked
package plumbleaf.web.guide;

import org.jspecify.annotations.NullMarked;
