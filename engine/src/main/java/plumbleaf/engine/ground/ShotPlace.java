package plumbleaf.engine.ground;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Where a shot lies. */
public sealed interface ShotPlace {
    <T> T match(Function<OnRun, T> onRun, Function<After, T> after, Function<At, T> at);

    /** At a station of a run; {@code inside} is how far off its line, positive to the inside, negative to the outside. */
    record OnRun(String run, Length station, Offset inside) implements ShotPlace {
        @Override
        public <T> T match(Function<OnRun, T> onRun, Function<After, T> after, Function<At, T> at) {
            return onRun.apply(this);
        }
    }

    /** Further along the run than another shot, by a level distance. */
    record After(String run, String shot, Length over, Offset inside) implements ShotPlace {
        @Override
        public <T> T match(Function<OnRun, T> onRun, Function<After, T> after, Function<At, T> at) {
            return after.apply(this);
        }
    }

    /** East and north of the job's origin. */
    record At(Offset east, Offset north) implements ShotPlace {
        @Override
        public <T> T match(Function<OnRun, T> onRun, Function<After, T> after, Function<At, T> at) {
            return at.apply(this);
        }
    }
}
