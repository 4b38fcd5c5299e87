/**
 * Photos and files that lie with a job. Knows bytes and who put them there; trusts neither a file's name nor what it says it is.
 *
 * <p>Read {@link plumbleaf.web.files.FileKind}, then {@link plumbleaf.web.files.JobFiles}.
 */
@NullMarked
package plumbleaf.web.files;

import org.jspecify.annotations.NullMarked;
