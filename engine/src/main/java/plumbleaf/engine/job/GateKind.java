package plumbleaf.engine.job;

import java.util.function.Function;
import plumbleaf.engine.quantity.Angle;

/** How a gate opens. */
public sealed interface GateKind {
    <T> T match(
            Function<Swing, T> swing, Function<Pair, T> pair, Function<Slide, T> slide, Function<Flagged, T> flagged);

    /** One leaf on hinges. Seen from outside, facing the closed gate. */
    record Swing(Stated<Side> hinge, Stated<SwingWay> swing, Angle opens, HoldOpen holdOpen) implements GateKind {
        @Override
        public <T> T match(
                Function<Swing, T> swing,
                Function<Pair, T> pair,
                Function<Slide, T> slide,
                Function<Flagged, T> flagged) {
            return swing.apply(this);
        }
    }

    /** Two leaves; leaf a is the left one from outside and takes {@code split} of the width; {@code active} is the side that opens first. */
    record Pair(double split, Side active, Stated<SwingWay> swing, Angle opens, HoldOpen holdOpen, Meeting meeting)
            implements GateKind {
        @Override
        public <T> T match(
                Function<Swing, T> swing,
                Function<Pair, T> pair,
                Function<Slide, T> slide,
                Function<Flagged, T> flagged) {
            return pair.apply(this);
        }
    }

    /** A cantilever slide gate, which opens to a side as seen from outside. */
    record Slide(Side opensTo, SlideSpec spec) implements GateKind {
        @Override
        public <T> T match(
                Function<Swing, T> swing,
                Function<Pair, T> pair,
                Function<Slide, T> slide,
                Function<Flagged, T> flagged) {
            return slide.apply(this);
        }
    }

    /** A kind that is named and priced by hand, but not worked out. */
    record Flagged(String name) implements GateKind {
        @Override
        public <T> T match(
                Function<Swing, T> swing,
                Function<Pair, T> pair,
                Function<Slide, T> slide,
                Function<Flagged, T> flagged) {
            return flagged.apply(this);
        }
    }
}
