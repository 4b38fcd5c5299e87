/**
 * The fence line: posts, bays, rails and pickets along the runs, fitted to the ground. Knows what was asked for, what can be bought and the ground; must
 * not know of gates' leaves, wind or footings: how far apart posts may stand for strength comes in as a {@link
 * plumbleaf.engine.line.SpacingLimit}, how wide posts and holes are as {@link plumbleaf.engine.line.PostSizes},
 * and of a gate its {@link plumbleaf.engine.line.GatePlace}.
 *
 * <p>Read {@link plumbleaf.engine.line.Layouts}, then {@link plumbleaf.engine.line.PostSearch}, {@link
 * plumbleaf.engine.line.Fairing} and {@link plumbleaf.engine.line.PicketRow}.
 */
@NullMarked
package plumbleaf.engine.line;

import org.jspecify.annotations.NullMarked;
