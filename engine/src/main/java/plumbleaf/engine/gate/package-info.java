/**
 * Gates: the leaf with every member, cut, hole, weld and picket, and the swing over the real ground with what cures a gate that drags. Knows lengths,
 * sections, catalogue, ground and what was asked for; must not know of wind, footings or strength.
 *
 * <p>Axes: r from the hinge pin axis towards the latch, z up from finished grade where the pin axis meets the ground, n towards someone outside who faces
 * the closed gate. The other hand is mirrored, never rotated; {@link plumbleaf.engine.gate.SwingAxes} is the one place where a hand becomes directions.
 *
 * <p>Read {@link plumbleaf.engine.gate.Hand}, {@link plumbleaf.engine.gate.Outline}, {@link plumbleaf.engine.gate.Leaf} and its maker
 * {@link plumbleaf.engine.gate.LeafMaker}, then {@link plumbleaf.engine.gate.Sweeps}, {@link plumbleaf.engine.gate.Swing}, and last
 * {@link plumbleaf.engine.gate.Gates}, which puts them together.
 *
 * <p>A gate has one leaf or, as a pair, two: {@link plumbleaf.engine.gate.GatePlan#hangs()} holds each as a {@link plumbleaf.engine.gate.LeafHang}, with its
 * own hand, grade, pin and swing, leaf a (the left one from outside) first. What is asked of a leaf goes through there; the plan's own grade and pin are
 * those of the first. {@code PairGates} works a pair out.
 */
@NullMarked
package plumbleaf.engine.gate;

import org.jspecify.annotations.NullMarked;
