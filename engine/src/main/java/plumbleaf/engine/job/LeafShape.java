package plumbleaf.engine.job;

import java.util.function.Function;
import plumbleaf.engine.quantity.Slope;

/** The outline of a leaf. */
public sealed interface LeafShape {
    <T> T match(Function<Square, T> square, Function<Raked, T> raked, Function<Sloped, T> sloped);

    /** Level top and bottom. */
    record Square() implements LeafShape {
        @Override
        public <T> T match(Function<Square, T> square, Function<Raked, T> raked, Function<Sloped, T> sloped) {
            return square.apply(this);
        }
    }

    /** Top and bottom follow the run's grade between the posts. */
    record Raked() implements LeafShape {
        @Override
        public <T> T match(Function<Square, T> square, Function<Raked, T> raked, Function<Sloped, T> sloped) {
            return raked.apply(this);
        }
    }

    /** Top and bottom at grades of their own, positive when rising from hinge to latch. */
    record Sloped(Slope top, Slope bottom) implements LeafShape {
        @Override
        public <T> T match(Function<Square, T> square, Function<Raked, T> raked, Function<Sloped, T> sloped) {
            return sloped.apply(this);
        }
    }
}
