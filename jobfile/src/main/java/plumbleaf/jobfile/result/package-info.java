/**
 * The result as JSON: every computed quantity under a key that carries its unit, the same bytes for the same design.
 *
 * <p>Each class writes one part of the design; {@code docs/schema/result.schema.json} says what the keys mean.
 */
@NullMarked
package plumbleaf.jobfile.result;

import org.jspecify.annotations.NullMarked;
