package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * A leaf in its place: where it hangs and how it swings. A single gate has one, a pair two, leaf a first.
 *
 * @param grade of the ground under the closed leaf, from its hinges to its latch, + up
 * @param pinElevation elevation of finished grade at its pin axis: its z = 0
 * @param swing of the stated hand; the worst of those in question where it was not said
 */
public record LeafHang(Leaf leaf, Slope grade, Offset pinElevation, Swing swing) {
    public String id() {
        return leaf.id();
    }
}
