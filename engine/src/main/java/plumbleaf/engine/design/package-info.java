/**
 * A job in, a design out: the only package that knows the order of work. Read {@link plumbleaf.engine.design.Designs}, then
 * {@link plumbleaf.engine.design.Design}.
 *
 * <p>A gate is designed leaf by leaf: {@link plumbleaf.engine.design.GateDesign#hung()} has one {@link plumbleaf.engine.design.HungLeaf} for each leaf of its
 * plan, with the post it hangs on and, for a single leaf, the post it latches to. Both posts of a pair are hinge posts: {@code hingePost} of its build and
 * design is leaf a's, {@code latchPost} leaf b's. A check of a leaf names the leaf, {@code G1a}; a check of the whole gate names the gate.
 */
@NullMarked
package plumbleaf.engine.design;

import org.jspecify.annotations.NullMarked;
