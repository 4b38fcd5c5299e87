package plumbleaf.engine.job;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;

/** How the end of a run is held. */
public sealed interface RunEnd {
    <T> T match(
            Function<Free, T> free, Function<Wall, T> wall, Function<Joins, T> joins, Function<Neighbour, T> neighbour);

    /** An end post with nothing beyond. */
    record Free() implements RunEnd {
        @Override
        public <T> T match(
                Function<Free, T> free,
                Function<Wall, T> wall,
                Function<Joins, T> joins,
                Function<Neighbour, T> neighbour) {
            return free.apply(this);
        }
    }

    /** A wall; the run ends at its face. */
    record Wall(plumbleaf.engine.support.WallKind of) implements RunEnd {
        @Override
        public <T> T match(
                Function<Free, T> free,
                Function<Wall, T> wall,
                Function<Joins, T> joins,
                Function<Neighbour, T> neighbour) {
            return wall.apply(this);
        }
    }

    /** It joins another run, which has the post; as a last end its own run, round a yard. */
    record Joins(String run) implements RunEnd {
        @Override
        public <T> T match(
                Function<Free, T> free,
                Function<Wall, T> wall,
                Function<Joins, T> joins,
                Function<Neighbour, T> neighbour) {
            return joins.apply(this);
        }
    }

    /**
     * It meets a fence that is not ours, at a post of our own: nothing hangs on theirs.
     *
     * @param fence which one, in words
     * @param height of that fence there over the ground
     * @param agreed whether its owner has
     */
    record Neighbour(String fence, Stated<Length> height, Stated<Boolean> agreed) implements RunEnd {
        @Override
        public <T> T match(
                Function<Free, T> free,
                Function<Wall, T> wall,
                Function<Joins, T> joins,
                Function<Neighbour, T> neighbour) {
            return neighbour.apply(this);
        }
    }
}
