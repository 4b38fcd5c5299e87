package plumbleaf.engine.gate;

import java.util.function.Function;

/** What stops a leaf. */
public sealed interface SwingLimit {
    <T> T match(Function<Nothing, T> nothing, Function<Ground, T> ground, Function<Struck, T> struck);

    /** Nothing up to 180 degrees. */
    record Nothing() implements SwingLimit {
        @Override
        public <T> T match(Function<Nothing, T> nothing, Function<Ground, T> ground, Function<Struck, T> struck) {
            return nothing.apply(this);
        }
    }

    /** The ground. */
    record Ground() implements SwingLimit {
        @Override
        public <T> T match(Function<Nothing, T> nothing, Function<Ground, T> ground, Function<Struck, T> struck) {
            return ground.apply(this);
        }
    }

    /** A thing that stands in the way. */
    record Struck(String what) implements SwingLimit {
        @Override
        public <T> T match(Function<Nothing, T> nothing, Function<Ground, T> ground, Function<Struck, T> struck) {
            return struck.apply(this);
        }
    }

    /** As files hold it: {@code nothing}, {@code ground}, or the thing's own name. */
    default String key() {
        return match(nothing -> "nothing", ground -> "ground", struck -> struck.what());
    }
}
