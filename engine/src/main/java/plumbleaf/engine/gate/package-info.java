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
 */
@NullMarked
package plumbleaf.engine.gate;

import org.jspecify.annotations.NullMarked;
