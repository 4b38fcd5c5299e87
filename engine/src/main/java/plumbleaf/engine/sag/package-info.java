/**
 * How far a hung gate drops, and what it does to its hinges and posts: leaf, hinges, hinge post and footing as one structure.
 *
 * <p>Knows the leaf, the posts' sections, the footing's spring and the loads on the leaf; must not know of strengths, rules or prices. Axes:
 * x from the pin towards the latch of the closed leaf, y towards the viewer outside, z up from finished grade at the pin; the other hand
 * is this one in the mirror. The leaf turns by q towards its swing side.
 *
 * <p>Read {@link plumbleaf.engine.sag.HungGate} and {@link plumbleaf.engine.sag.HungLoads} (what is asked), {@link
 * plumbleaf.engine.sag.Sags} and {@link plumbleaf.engine.sag.GateForces} (who answers), {@link plumbleaf.engine.sag.GateSag} and {@link
 * plumbleaf.engine.sag.CaseForces} (what comes out); for a pair {@link plumbleaf.engine.sag.PairForces}, which holds two
 * of them against each other where they meet; then {@code LeafFrame} and {@code GateFrame} for the model itself.
 */
@NullMarked
package plumbleaf.engine.sag;

import org.jspecify.annotations.NullMarked;
