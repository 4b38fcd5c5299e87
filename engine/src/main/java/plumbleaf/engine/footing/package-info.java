/**
 * How deep and wide a post's hole must be, how far it gives, what goes into it and what frost does to it. Knows soil, wind demand at grade and the
 * limits of the job; must not know the gate's frame or the price.
 *
 * <p>Read {@link plumbleaf.engine.footing.PierSpring}, {@link plumbleaf.engine.footing.SoilBand}, {@link plumbleaf.engine.footing.PoleDepth},
 * {@link plumbleaf.engine.footing.Footings}.
 */
@NullMarked
package plumbleaf.engine.footing;

import org.jspecify.annotations.NullMarked;
