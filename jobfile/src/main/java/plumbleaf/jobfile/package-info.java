/**
 * The job format and the result: strict reading, stable writing, every error named.
 *
 * <p>Knows files as text and bytes and the engine's records; never opens a file itself, so that it runs wherever the engine does.
 * Read {@code json}, then {@code input}, then the readers and writers here.
 */
@NullMarked
package plumbleaf.jobfile;

import org.jspecify.annotations.NullMarked;
