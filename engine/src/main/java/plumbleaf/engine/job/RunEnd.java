package plumbleaf.engine.job;

import java.util.function.Function;

/** How the end of a run is held. */
public sealed interface RunEnd {
    <T> T match(Function<Free, T> free, Function<Wall, T> wall, Function<Joins, T> joins);

    /** An end post with nothing beyond. */
    record Free() implements RunEnd {
        @Override
        public <T> T match(Function<Free, T> free, Function<Wall, T> wall, Function<Joins, T> joins) {
            return free.apply(this);
        }
    }

    /** A wall; the run ends at its face. */
    record Wall(plumbleaf.engine.support.WallKind of) implements RunEnd {
        @Override
        public <T> T match(Function<Free, T> free, Function<Wall, T> wall, Function<Joins, T> joins) {
            return wall.apply(this);
        }
    }

    /** It joins another run, which has the post. */
    record Joins(String run) implements RunEnd {
        @Override
        public <T> T match(Function<Free, T> free, Function<Wall, T> wall, Function<Joins, T> joins) {
            return joins.apply(this);
        }
    }
}
