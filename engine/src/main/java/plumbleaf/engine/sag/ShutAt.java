package plumbleaf.engine.sag;

/** Where a closed leaf is kept from swinging. */
public enum ShutAt {
    /** By its latch, at the latch's height. */
    LATCH,
    /** By the drop rod of a pair, at the foot of its meeting stile. */
    FOOT;

    HeldAt heldAt() {
        return this == LATCH ? new HeldAt.AtLatch() : new HeldAt.AtCorner();
    }
}
