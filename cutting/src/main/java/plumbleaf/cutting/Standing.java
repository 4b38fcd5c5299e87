package plumbleaf.cutting;

import java.util.List;

/** How far the work on a task has come: the cheapest plan found, and what is shown that none costs less than. Settled once the two meet. */
final class Standing {
    private final Cutting cutting;
    private List<Column> best = List.of();
    private long bestCost = Long.MAX_VALUE;
    private long bound;

    Standing(Cutting cutting) {
        this.cutting = cutting;
    }

    /** One pattern a bar; empty while there is no plan. */
    List<Column> best() {
        return best;
    }

    boolean hasPlan() {
        return bestCost < Long.MAX_VALUE;
    }

    /** {@code Long.MAX_VALUE} while there is no plan. */
    long bestCost() {
        return bestCost;
    }

    long bound() {
        return bound;
    }

    boolean settled() {
        return bestCost <= bound;
    }

    /** Keeps a plan that is cheaper; an empty one is none. */
    void keep(List<Column> bars) {
        if (bars.isEmpty()) return;
        long cost = 0;
        for (Column bar : bars) cost += cutting.price[bar.kind];
        if (cost >= bestCost) return;
        bestCost = cost;
        best = List.copyOf(bars);
    }

    /** No plan costs less than this. */
    void atLeast(long cost) {
        bound = Math.max(bound, cost);
    }

    /** No plan costs just the bound. */
    void notAtBound() {
        bound += cutting.step();
    }

    /** What is found costs as little as can be. */
    void nothingBetter() {
        bound = bestCost;
    }
}
