package plumbleaf.engine.sag;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;

/** Where the leaf is kept from swinging. */
sealed interface HeldAt {
    <T> T match(Function<AtLatch, T> atLatch, Function<AtCorner, T> atCorner, Function<OnRail, T> onRail);

    /** By the latch, at its height. */
    record AtLatch() implements HeldAt {
        @Override
        public <T> T match(Function<AtLatch, T> atLatch, Function<AtCorner, T> atCorner, Function<OnRail, T> onRail) {
            return atLatch.apply(this);
        }
    }

    /** By a rod into the ground at the foot of the latch stile. */
    record AtCorner() implements HeldAt {
        @Override
        public <T> T match(Function<AtLatch, T> atLatch, Function<AtCorner, T> atCorner, Function<OnRail, T> onRail) {
            return atCorner.apply(this);
        }
    }

    /** By a stop against the bottom rail. */
    record OnRail(Length radius) implements HeldAt {
        @Override
        public <T> T match(Function<AtLatch, T> atLatch, Function<AtCorner, T> atCorner, Function<OnRail, T> onRail) {
            return onRail.apply(this);
        }
    }
}
