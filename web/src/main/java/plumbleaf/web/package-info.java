/**
 * The workspace: one page frame, eight rooms, where the drawing is the input. Knows HTTP, the store and who is there; knows nothing of
 * how a fence is computed, which it asks of the engine, the job file and the documents.
 *
 * <p>Read {@link plumbleaf.web.Workspace}, then {@code store}, {@code people}, {@code page}, {@code room}, {@code desk}. The packages
 * import each other only in that order.
 */
@NullMarked
package plumbleaf.web;

import org.jspecify.annotations.NullMarked;
