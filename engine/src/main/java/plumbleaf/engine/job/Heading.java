package plumbleaf.engine.job;

import java.util.function.Function;
import plumbleaf.engine.quantity.Angle;

/** Which way a leg goes. */
public sealed interface Heading {
    <T> T match(Function<Bearing, T> bearing, Function<Turn, T> turn);

    /** Clockwise from north. */
    record Bearing(Angle fromNorth) implements Heading {
        @Override
        public <T> T match(Function<Bearing, T> bearing, Function<Turn, T> turn) {
            return bearing.apply(this);
        }
    }

    /** Away from the leg before it, positive to the left. */
    record Turn(Angle left) implements Heading {
        @Override
        public <T> T match(Function<Bearing, T> bearing, Function<Turn, T> turn) {
            return turn.apply(this);
        }
    }
}
