package plumbleaf.engine.bars;

import java.util.List;
import java.util.function.Function;

/** A plan, or why there is none. */
public sealed interface CutAnswer {
    <T> T match(Function<Planned, T> planned, Function<TooLong, T> tooLong, Function<TooFewBars, T> tooFewBars);

    record Planned(CutPlan plan) implements CutAnswer {
        @Override
        public <T> T match(
                Function<Planned, T> planned, Function<TooLong, T> tooLong, Function<TooFewBars, T> tooFewBars) {
            return planned.apply(this);
        }
    }

    /** No bar is long enough for these pieces: splice them, or get longer bars. */
    record TooLong(List<String> pieces, long longestUsableNm) implements CutAnswer {
        public TooLong {
            pieces = List.copyOf(pieces);
        }

        @Override
        public <T> T match(
                Function<Planned, T> planned, Function<TooLong, T> tooLong, Function<TooFewBars, T> tooFewBars) {
            return tooLong.apply(this);
        }
    }

    /**
     * Every bar on hand together does not hold the pieces.
     *
     * @param proven false when it was only not found within the steps allowed
     */
    record TooFewBars(boolean proven, long steps) implements CutAnswer {
        @Override
        public <T> T match(
                Function<Planned, T> planned, Function<TooLong, T> tooLong, Function<TooFewBars, T> tooFewBars) {
            return tooFewBars.apply(this);
        }
    }
}
