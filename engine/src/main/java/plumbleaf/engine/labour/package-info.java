/**
 * Hours: what is done, how often, and how long it takes by the rates of the price book. Knows posts, bays and leaves by count and size; must not know money.
 *
 * <p>Read {@link plumbleaf.engine.labour.Work}, {@link plumbleaf.engine.labour.LabourRate}, {@link plumbleaf.engine.labour.Labours}.
 */
@NullMarked
package plumbleaf.engine.labour;

import org.jspecify.annotations.NullMarked;
