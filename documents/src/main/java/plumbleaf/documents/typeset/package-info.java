/**
 * Papers onto pages: blocks become marks on a page, page breaks are found, and the pages go to the same plotters as drawings do; or
 * blocks become HTML for a screen.
 *
 * <p>Read {@link plumbleaf.documents.typeset.Pages}, then {@link plumbleaf.documents.typeset.Slabs}.
 */
@NullMarked
package plumbleaf.documents.typeset;

import org.jspecify.annotations.NullMarked;
