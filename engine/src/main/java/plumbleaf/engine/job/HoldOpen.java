package plumbleaf.engine.job;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;

/** What holds the open leaf. */
public sealed interface HoldOpen {
    <T> T match(
            Function<Free, T> free,
            Function<CaneBolt, T> caneBolt,
            Function<Stop, T> stop,
            Function<HingeLock, T> hingeLock);

    /** Nothing: it swings, and carries no static wind. */
    record Free() implements HoldOpen {
        @Override
        public <T> T match(
                Function<Free, T> free,
                Function<CaneBolt, T> caneBolt,
                Function<Stop, T> stop,
                Function<HingeLock, T> hingeLock) {
            return free.apply(this);
        }
    }

    /** A rod into the ground at the latch stile. */
    record CaneBolt() implements HoldOpen {
        @Override
        public <T> T match(
                Function<Free, T> free,
                Function<CaneBolt, T> caneBolt,
                Function<Stop, T> stop,
                Function<HingeLock, T> hingeLock) {
            return caneBolt.apply(this);
        }
    }

    /** A post or stop at a distance from the pins. */
    record Stop(Length radius) implements HoldOpen {
        @Override
        public <T> T match(
                Function<Free, T> free,
                Function<CaneBolt, T> caneBolt,
                Function<Stop, T> stop,
                Function<HingeLock, T> hingeLock) {
            return stop.apply(this);
        }
    }

    /** The hinge itself locks: the whole wind couple goes through it. */
    record HingeLock(Length lever) implements HoldOpen {
        @Override
        public <T> T match(
                Function<Free, T> free,
                Function<CaneBolt, T> caneBolt,
                Function<Stop, T> stop,
                Function<HingeLock, T> hingeLock) {
            return hingeLock.apply(this);
        }
    }
}
