package plumbleaf.engine.job;

import java.util.function.Function;
import plumbleaf.engine.quantity.Length;

/** How the top of a leaf's infill runs from its hinge edge to its latch edge, over the straight line between the two. */
public sealed interface TopEdge {
    <T> T match(Function<Straight, T> straight, Function<Arched, T> arched, Function<Scalloped, T> scalloped);

    /** As files hold it. */
    default String key() {
        return match(straight -> "straight", arched -> "arched", scalloped -> "scalloped");
    }

    /** How far the top at the edges stands above the lowest point of the curve. */
    default Length aboveLowest() {
        return match(straight -> Length.ZERO, arched -> Length.ZERO, Scalloped::dip);
    }

    /** How far the top in the middle stands above the top at the edges. */
    default Length aboveEdges() {
        return match(straight -> Length.ZERO, Arched::rise, scalloped -> Length.ZERO);
    }

    /** Height of the curve over the middle of its chord, without sign. */
    default Length curve() {
        return match(straight -> Length.ZERO, Arched::rise, Scalloped::dip);
    }

    record Straight() implements TopEdge {
        @Override
        public <T> T match(
                Function<Straight, T> straight, Function<Arched, T> arched, Function<Scalloped, T> scalloped) {
            return straight.apply(this);
        }
    }

    /** Highest in the middle. */
    record Arched(Length rise) implements TopEdge {
        @Override
        public <T> T match(
                Function<Straight, T> straight, Function<Arched, T> arched, Function<Scalloped, T> scalloped) {
            return arched.apply(this);
        }
    }

    /** Lowest in the middle. */
    record Scalloped(Length dip) implements TopEdge {
        @Override
        public <T> T match(
                Function<Straight, T> straight, Function<Arched, T> arched, Function<Scalloped, T> scalloped) {
            return scalloped.apply(this);
        }
    }
}
