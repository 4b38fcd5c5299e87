/**
 * Who issues papers: name, address, phone, license, the own mark, and on what sizes of paper.
 *
 * <p>Knows the store and pages. Read {@link plumbleaf.web.letterhead.HouseLetterhead}.
 */
@NullMarked
package plumbleaf.web.letterhead;

import org.jspecify.annotations.NullMarked;
