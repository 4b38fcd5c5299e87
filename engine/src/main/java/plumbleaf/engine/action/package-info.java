/**
 * What loads put on the foot of a post, combined as allowable-stress design combines them. Knows wind and weights; must not know strength or soil.
 *
 * <p>Read {@link plumbleaf.engine.action.BaseAction}, {@link plumbleaf.engine.action.Combination}, {@link plumbleaf.engine.action.Combinations}.
 */
@NullMarked
package plumbleaf.engine.action;

import org.jspecify.annotations.NullMarked;
