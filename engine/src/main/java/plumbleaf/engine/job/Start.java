package plumbleaf.engine.job;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Where a run begins. */
public sealed interface Start {
    <T> T match(Function<At, T> at, Function<OnRun, T> onRun);

    /** East and north from the job's origin. */
    record At(Offset east, Offset north) implements Start {
        @Override
        public <T> T match(Function<At, T> at, Function<OnRun, T> onRun) {
            return at.apply(this);
        }
    }

    /** At a station of a run before it in the job, or so far off its line, positive to the inside. */
    record OnRun(String run, Length station, Offset inside) implements Start {
        @Override
        public <T> T match(Function<At, T> at, Function<OnRun, T> onRun) {
            return onRun.apply(this);
        }
    }
}
