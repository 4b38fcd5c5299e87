/**
 * Everything in one file: a backup, which is the store row by row, for this program; and an archive, which is JSON and files, for any
 * program. Both are sealed, both are taken whole or not at all.
 *
 * <p>Read {@link plumbleaf.web.archive.Backup}, {@link plumbleaf.web.archive.Archive}, then the sealed zip they share.
 */
@NullMarked
package plumbleaf.web.archive;

import org.jspecify.annotations.NullMarked;
