package plumbleaf.engine.ground;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** How a shot's height was found. */
public sealed interface ShotHeight {
    <T> T match(Function<Rod, T> rod, Function<Elevation, T> elevation, Function<Falls, T> falls);

    /** A rod reading from a setup: the height of instrument less the reading. */
    record Rod(String setup, Length reading) implements ShotHeight {
        @Override
        public <T> T match(Function<Rod, T> rod, Function<Elevation, T> elevation, Function<Falls, T> falls) {
            return rod.apply(this);
        }
    }

    /** An elevation from the benchmark's zero. */
    record Elevation(Offset above) implements ShotHeight {
        @Override
        public <T> T match(Function<Rod, T> rod, Function<Elevation, T> elevation, Function<Falls, T> falls) {
            return elevation.apply(this);
        }
    }

    /** So much below another shot; negative when it rises. */
    record Falls(String shot, Offset by) implements ShotHeight {
        @Override
        public <T> T match(Function<Rod, T> rod, Function<Elevation, T> elevation, Function<Falls, T> falls) {
            return falls.apply(this);
        }
    }
}
