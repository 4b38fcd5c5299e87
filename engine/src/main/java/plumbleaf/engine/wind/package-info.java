/**
 * Wind on fences and leaves by ASCE 7: how hard it presses, where, and on which post. Strength level throughout: allowable-stress design takes 0.6 of it
 * in {@code action}. Knows walls and screens; must not know posts' strength or soil.
 *
 * <p>Read {@link plumbleaf.engine.wind.VelocityPressure}, {@link plumbleaf.engine.wind.WallStretch}, {@link plumbleaf.engine.wind.WallWind},
 * {@link plumbleaf.engine.wind.LeafWind}.
 */
@NullMarked
package plumbleaf.engine.wind;

import org.jspecify.annotations.NullMarked;
