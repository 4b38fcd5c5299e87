/**
 * A cut list of the shop's own, for no job: pieces and what they are cut from, in one table. Read {@link plumbleaf.jobfile.cutlist.CutListFile}.
 */
@NullMarked
package plumbleaf.jobfile.cutlist;

import org.jspecify.annotations.NullMarked;
