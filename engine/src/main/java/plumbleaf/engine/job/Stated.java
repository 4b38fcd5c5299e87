package plumbleaf.engine.job;

import java.util.Optional;
import java.util.function.Function;

/** A value that may have been left open: said by the user, or not. */
public sealed interface Stated<V> {
    <T> T match(Function<Said<V>, T> said, Function<Unsaid<V>, T> unsaid);

    static <V> Stated<V> of(V value) {
        return new Said<>(value);
    }

    static <V> Stated<V> open() {
        return new Unsaid<>();
    }

    /** The value, where one was said. */
    default Optional<V> value() {
        return match(said -> Optional.of(said.is()), unsaid -> Optional.empty());
    }

    /** The value, or this one where none was said. */
    default V or(V instead) {
        return match(said -> said.is(), unsaid -> instead);
    }

    default boolean isSaid() {
        return match(said -> true, unsaid -> false);
    }

    record Said<V>(V is) implements Stated<V> {
        @Override
        public <T> T match(Function<Said<V>, T> said, Function<Unsaid<V>, T> unsaid) {
            return said.apply(this);
        }
    }

    record Unsaid<V>() implements Stated<V> {
        @Override
        public <T> T match(Function<Said<V>, T> said, Function<Unsaid<V>, T> unsaid) {
            return unsaid.apply(this);
        }
    }
}
