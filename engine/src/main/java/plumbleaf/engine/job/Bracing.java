package plumbleaf.engine.job;

import java.util.function.Function;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;

/** What keeps a leaf square besides its corners. */
public sealed interface Bracing {
    <T> T match(Function<Tubes, T> tubes, Function<Cross, T> cross, Function<Rod, T> rod);

    /** 3/8 in., drawn up by hand, so that the leaf's own weight pulls it. Judgement. */
    static Bracing usualRod() {
        return new Rod(Length.inches(0.375), Force.pounds(100), RodRuns.FROM_TOP_HINGE);
    }

    static Bracing tubes(int count) {
        return new Tubes(count);
    }

    /** As files hold it, without what belongs to it. */
    default String key() {
        return match(
                tubes -> tubes.count() == 0 ? "none" : tubes.count() == 1 ? "one" : "two", cross -> "x", rod -> "rod");
    }

    /** Short, to tell builds apart. */
    default String mark() {
        return match(
                tubes -> tubes.count() == 0 ? "0" : tubes.count() == 1 ? "1" : "2",
                cross -> "x",
                rod -> "rod " + LengthText.inchesOnly(rod.diameter().inches()) + " "
                        + rod.runs().key());
    }

    /** How many diagonals are seen. */
    default int diagonals() {
        return match(Tubes::count, cross -> 2, rod -> rod.runs() == RodRuns.BOTH ? 2 : 1);
    }

    /** Diagonals of the frame's own tube, each in a panel of its own from the lowest up; two in a leaf of one panel meet at the latch stile. */
    record Tubes(int count) implements Bracing {
        public Tubes {
            if (count < 0 || count > 2) throw new IllegalArgumentException("Braces must be 0 to 2, were " + count);
        }

        @Override
        public <T> T match(Function<Tubes, T> tubes, Function<Cross, T> cross, Function<Rod, T> rod) {
            return tubes.apply(this);
        }
    }

    /** Two tubes that cross in the lowest panel: one runs through, the other is cut in two against it. */
    record Cross() implements Bracing {
        @Override
        public <T> T match(Function<Tubes, T> tubes, Function<Cross, T> cross, Function<Rod, T> rod) {
            return cross.apply(this);
        }
    }

    /**
     * A round rod with a turnbuckle from corner to corner of the leaf. It carries tension alone.
     *
     * @param pretension what it is tightened to on the bench, where the leaf is trued with it on
     */
    record Rod(Length diameter, Force pretension, RodRuns runs) implements Bracing {
        @Override
        public <T> T match(Function<Tubes, T> tubes, Function<Cross, T> cross, Function<Rod, T> rod) {
            return rod.apply(this);
        }
    }
}
