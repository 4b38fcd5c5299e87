package plumbleaf.engine.sag;

import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Angle;

/** From the leaf's own axes (r, n, z) to those of the closed gate, for a leaf that stands open by some angle. */
record Turn(double cos, double sin) {
    static final Turn CLOSED = new Turn(1, 0);

    /** Out, the swing side is the viewer's, so the leaf turns from x towards y; in, the other way. */
    static Turn of(Hand hand, Angle open) {
        return new Turn(StrictMath.cos(open.radians()), swingSign(hand) * StrictMath.sin(open.radians()));
    }

    static int swingSign(Hand hand) {
        return hand.swing() == SwingWay.OUT ? 1 : -1;
    }

    Vector toGate(Vector leaf) {
        return new Vector(leaf.x() * cos - leaf.y() * sin, leaf.x() * sin + leaf.y() * cos, leaf.z());
    }

    Vector toLeaf(Vector gate) {
        return new Vector(gate.x() * cos + gate.y() * sin, -gate.x() * sin + gate.y() * cos, gate.z());
    }
}
