/**
 * From a tree of JSON to values of the engine: one reader for the fields of an object, the kinds of text a field may hold, and every
 * error of a file collected with its line, field, value and cure.
 *
 * <p>Read {@link plumbleaf.jobfile.input.InputError}, {@link plumbleaf.jobfile.input.Intake}, then
 * {@link plumbleaf.jobfile.input.Fields}.
 */
@NullMarked
package plumbleaf.jobfile.input;

import org.jspecify.annotations.NullMarked;
