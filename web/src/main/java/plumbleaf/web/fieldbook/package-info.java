/**
 * The field book: a page that is opened once and then works without a server on the jobs it holds. It measures, edits and designs with the engine
 * in the browser; what is changed waits on the device and goes up by the doors of the rooms, under their rules.
 *
 * <p>Read {@link plumbleaf.web.fieldbook.FieldBookDoor}, then {@link plumbleaf.web.fieldbook.HeldJobs}, then {@code book.js}.
 */
@NullMarked
package plumbleaf.web.fieldbook;

import org.jspecify.annotations.NullMarked;
