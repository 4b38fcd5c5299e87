/**
 * What is said about a job: how bad, what was measured, against which limit, by which clause, and what would cure it.
 *
 * <p>Each later package adds its own findings; this one knows only their common shape and order.
 */
@NullMarked
package plumbleaf.engine.finding;

import org.jspecify.annotations.NullMarked;
