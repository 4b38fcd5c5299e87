/**
 * A cut list of the shop's own, for no job: typed or pasted, planned with the yard's bars and the price books' bars, and drawn. Nothing of it is kept. Read
 * {@link plumbleaf.web.cutlist.CutListDoor}.
 */
@NullMarked
package plumbleaf.web.cutlist;

import org.jspecify.annotations.NullMarked;
