/**
 * A linear space frame: straight prismatic members, springs, supports, loads, and what they do.
 *
 * <p>This is a numeric kernel, so its records hold plain doubles with the unit in the name: pound, inch, radian, psi. It has not heard
 * of gates or fences, and works in any consistent set of units. Right-handed axes; a moment is positive by the right-hand rule.
 * Members follow Euler and Bernoulli (plane sections, no shear flexibility), displacements are small, and everything is linear.
 *
 * <p>Reading order: {@link plumbleaf.engine.frame.FrameModel} (what there is), {@link plumbleaf.engine.frame.Load} (what acts on it),
 * {@link plumbleaf.engine.frame.Frames} (solve), {@link plumbleaf.engine.frame.FrameSolution} (what comes out), {@link
 * plumbleaf.engine.frame.VirtualWork} (which part causes how much of one displacement); then the workings: {@code Element}, {@code
 * NodeOrder}, {@code Skyline}.
 */
@NullMarked
package plumbleaf.engine.frame;

import org.jspecify.annotations.NullMarked;
