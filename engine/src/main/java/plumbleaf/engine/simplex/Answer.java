package plumbleaf.engine.simplex;

import java.util.List;
import java.util.function.Function;

/** How a linear program came out. */
public sealed interface Answer {
    <T> T match(
            Function<Optimal, T> optimal,
            Function<Infeasible, T> infeasible,
            Function<Unbounded, T> unbounded,
            Function<Unfinished, T> unfinished);

    /**
     * The least cost.
     *
     * @param values of the variables, in order
     * @param duals of the constraints, in order: what the least cost rises by for each unit the binding limit of a constraint rises; zero where none binds
     * @param steps pivots taken
     */
    record Optimal(double cost, List<Double> values, List<Double> duals, int steps) implements Answer {
        public Optimal {
            values = List.copyOf(values);
            duals = List.copyOf(duals);
        }

        @Override
        public <T> T match(
                Function<Optimal, T> optimal,
                Function<Infeasible, T> infeasible,
                Function<Unbounded, T> unbounded,
                Function<Unfinished, T> unfinished) {
            return optimal.apply(this);
        }
    }

    /**
     * No values satisfy all limits.
     *
     * @param missed the least sum by which limits are missed
     */
    record Infeasible(double missed, int steps) implements Answer {
        @Override
        public <T> T match(
                Function<Optimal, T> optimal,
                Function<Infeasible, T> infeasible,
                Function<Unbounded, T> unbounded,
                Function<Unfinished, T> unfinished) {
            return infeasible.apply(this);
        }
    }

    /** The cost falls without end. */
    record Unbounded(int steps) implements Answer {
        @Override
        public <T> T match(
                Function<Optimal, T> optimal,
                Function<Infeasible, T> infeasible,
                Function<Unbounded, T> unbounded,
                Function<Unfinished, T> unfinished) {
            return unbounded.apply(this);
        }
    }

    /** The steps allowed were used up. */
    record Unfinished(int steps) implements Answer {
        @Override
        public <T> T match(
                Function<Optimal, T> optimal,
                Function<Infeasible, T> infeasible,
                Function<Unbounded, T> unbounded,
                Function<Unfinished, T> unfinished) {
            return unfinished.apply(this);
        }
    }
}
