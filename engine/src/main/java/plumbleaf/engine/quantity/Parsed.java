package plumbleaf.engine.quantity;

import java.util.Optional;
import java.util.function.Function;

/** What came of reading a text: a value, or what is wrong with it and how to put it right. */
public sealed interface Parsed<T> {
    <R> R match(Function<Read<T>, R> read, Function<Refused<T>, R> refused);

    /** The value, where there is one. */
    default Optional<T> value() {
        return match(read -> Optional.of(read.is()), refused -> Optional.empty());
    }

    /** Another value from this one; a refusal stays as it is. */
    default <R> Parsed<R> map(Function<T, R> change) {
        return match(
                read -> new Read<>(change.apply(read.is())),
                refused -> new Refused<>(refused.problem(), refused.cure()));
    }

    /** A step that may itself refuse. */
    default <R> Parsed<R> then(Function<T, Parsed<R>> step) {
        return match(read -> step.apply(read.is()), refused -> new Refused<>(refused.problem(), refused.cure()));
    }

    record Read<T>(T is) implements Parsed<T> {
        @Override
        public <R> R match(Function<Read<T>, R> read, Function<Refused<T>, R> refused) {
            return read.apply(this);
        }
    }

    /**
     * @param problem what is wrong, as half a sentence: {@code a length needs its unit}
     * @param cure    what to write instead: {@code write 50" or 4' 2"}
     */
    record Refused<T>(String problem, String cure) implements Parsed<T> {
        @Override
        public <R> R match(Function<Read<T>, R> read, Function<Refused<T>, R> refused) {
            return refused.apply(this);
        }
    }
}
