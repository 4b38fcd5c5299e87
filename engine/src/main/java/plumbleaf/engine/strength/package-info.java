/**
 * Whether members, connections and fasteners stand what acts on them, and at which gust they would not. Knows sections, wood and combined actions; must not
 * know how a gate hangs or what things cost.
 *
 * <p>Read {@link plumbleaf.engine.strength.TubeStrength}, {@link plumbleaf.engine.strength.Interaction}, {@link plumbleaf.engine.strength.PostCheck},
 * {@link plumbleaf.engine.strength.RatedGust}; then {@link plumbleaf.engine.strength.HingePlate}, {@link plumbleaf.engine.strength.RailCheck} and the
 * fasteners.
 */
@NullMarked
package plumbleaf.engine.strength;

import org.jspecify.annotations.NullMarked;
