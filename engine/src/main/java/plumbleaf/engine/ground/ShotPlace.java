package plumbleaf.engine.ground;

import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Where a shot lies. */
public sealed interface ShotPlace {
    <T> T match(Function<OnRun, T> onRun, Function<After, T> after, Function<At, T> at, Function<Tapes, T> tapes);

    /** At a station of a run; {@code inside} is how far off its line, positive to the inside, negative to the outside. */
    record OnRun(String run, Length station, Offset inside) implements ShotPlace {
        @Override
        public <T> T match(
                Function<OnRun, T> onRun, Function<After, T> after, Function<At, T> at, Function<Tapes, T> tapes) {
            return onRun.apply(this);
        }
    }

    /**
     * Further along the run than another shot, by a distance on the tape.
     *
     * @param lay how the tape lay; one along the ground is reduced with the heights of both
     */
    record After(String run, String shot, Length over, TapeLay lay, Offset inside) implements ShotPlace {
        @Override
        public <T> T match(
                Function<OnRun, T> onRun, Function<After, T> after, Function<At, T> at, Function<Tapes, T> tapes) {
            return after.apply(this);
        }
    }

    /** East and north of the job's origin. */
    record At(Offset east, Offset north) implements ShotPlace {
        @Override
        public <T> T match(
                Function<OnRun, T> onRun, Function<After, T> after, Function<At, T> at, Function<Tapes, T> tapes) {
            return at.apply(this);
        }
    }

    /**
     * Where two level tapes from known points meet.
     *
     * @param from the first point, a shot
     * @param length of the tape from it
     * @param and the second point
     * @param andLength of the tape from that
     * @param left the side of the line from the first point to the second, seen along it
     * @param check a third tape, where one was read
     */
    record Tapes(String from, Length length, String and, Length andLength, boolean left, Optional<Tape> check)
            implements ShotPlace {
        @Override
        public <T> T match(
                Function<OnRun, T> onRun, Function<After, T> after, Function<At, T> at, Function<Tapes, T> tapes) {
            return tapes.apply(this);
        }
    }

    /** A level tape from a shot. */
    record Tape(String from, Length length) {}
}
