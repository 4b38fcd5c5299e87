package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A whole plan from fractions: take every pattern as often as its whole part says, else once one of those nearest to their next whole number; then solve for the
 * rest. Which one is told by a number, so that several dives end in different places, the same ones every time.
 */
final class Dive {
    /** A dive looks at this many of the likeliest patterns. */
    private static final int LIKELIEST = 4;

    private final Cutting cutting;
    private final Relaxation relaxation;
    private final Effort effort;
    private final long step;
    private long seed;

    Dive(Cutting cutting, Relaxation relaxation, Effort effort) {
        this.cutting = cutting;
        this.relaxation = relaxation;
        this.effort = effort;
        this.step = cutting.step();
    }

    /**
     * All bars of a plan of at most {@code most}; empty when the dive does not end in one.
     *
     * @param number 0 for the likeliest pattern at every turn
     */
    List<Column> down(int number, long most) {
        seed = number * 0x9E3779B97F4A7C15L + 1;
        int[] demand = cutting.demand.clone();
        int[] supply = cutting.supply.clone();
        List<Column> bars = new ArrayList<>();
        long cost = 0;
        while (left(demand)) {
            Relaxation.Solved solved = relaxation.solve(demand, supply, Long.MAX_VALUE, true);
            if (effort.spent() || !solved.complete()) return List.of();
            if (cost + solved.bound().roundedUp(step) > most) return List.of();
            boolean any = false;
            for (Relaxation.Share share : solved.shares()) {
                long whole = (long) Math.floor(share.times() + 1e-4);
                for (long time = 0; time < whole; time++) any |= take(share.column(), demand, supply, bars);
            }
            if (!any && !take(likely(solved.shares(), number), demand, supply, bars)) return List.of();
            cost = 0;
            for (Column bar : bars) cost += cutting.price[bar.kind];
            if (cost > most) return List.of();
        }
        return bars;
    }

    private Column likely(List<Relaxation.Share> shares, int number) {
        List<Relaxation.Share> ordered = new ArrayList<>(shares);
        ordered.sort(Comparator.comparingDouble(share -> -Math.round(share.times() * 1e6)));
        int reach = number == 0 ? 1 : Math.min(LIKELIEST, ordered.size());
        seed = seed * 6364136223846793005L + 1442695040888963407L;
        int pick = (int) ((seed >>> 33) % reach);
        return ordered.get(pick).column();
    }

    private boolean take(Column column, int[] demand, int[] supply, List<Column> bars) {
        Column trimmed = column.trimmedTo(demand);
        if (trimmed.isEmpty() || supply[column.kind] <= 0) return false;
        trimmed.takeFrom(demand);
        if (supply[column.kind] != Cutting.UNLIMITED) supply[column.kind]--;
        bars.add(trimmed);
        return true;
    }

    private static boolean left(int[] demand) {
        for (int each : demand) {
            if (each > 0) return true;
        }
        return false;
    }
}
