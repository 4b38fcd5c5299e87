package plumbleaf.engine.footing;

import java.util.OptionalDouble;
import java.util.function.Function;

/** What holds the foot of a post, or the hinges where there is no post, as the frame of a gate feels it. */
public sealed interface BaseSpring permits PierSpring, BaseSpring.Planes, BaseSpring.Wall {
    <T> T match(Function<PierSpring, T> pier, Function<Planes, T> planes, Function<Wall, T> wall);

    /** How it gives across the run, where a latch strikes. */
    PierSpring across();

    /** A spring with its own stiffness in each plane: a plate that gives in bending, a socket by an edge. Empty sinking or twisting is none at all. */
    record Planes(PierSpring along, PierSpring across, OptionalDouble sinkingLbPerIn, OptionalDouble twistingLbInPerRad)
            implements BaseSpring {
        /** Alike both ways, on something that neither lets it sink nor twist. */
        public static Planes alike(PierSpring both) {
            return new Planes(both, both, OptionalDouble.empty(), OptionalDouble.empty());
        }

        @Override
        public <T> T match(Function<PierSpring, T> pier, Function<Planes, T> planes, Function<Wall, T> wall) {
            return planes.apply(this);
        }
    }

    /** Hinges fixed to a wall, each fixing with its own give. */
    record Wall(double lbPerIn) implements BaseSpring {
        /** A wall beside what hangs on it. Judgement. */
        private static final PierSpring UNMOVED = new PierSpring(1e9, 0, 1e13);

        public Wall {
            if (!(lbPerIn > 0)) throw new IllegalArgumentException("A fixing in a wall must resist");
        }

        @Override
        public PierSpring across() {
            return UNMOVED;
        }

        @Override
        public <T> T match(Function<PierSpring, T> pier, Function<Planes, T> planes, Function<Wall, T> wall) {
            return wall.apply(this);
        }
    }
}
