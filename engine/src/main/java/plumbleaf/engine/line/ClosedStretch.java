package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A stretch of a run that no post may stand in, hole counted; a post may stand on its edge. */
record ClosedStretch(double fromIn, double toIn, String why) {
    private static final String AND = " and ";

    /** Sorted, with those that overlap made one; two that touch leave their common edge open. */
    static List<ClosedStretch> merged(List<ClosedStretch> stretches) {
        List<ClosedStretch> sorted = new ArrayList<>(stretches);
        sorted.sort(Comparator.comparingDouble(ClosedStretch::fromIn).thenComparingDouble(ClosedStretch::toIn));
        List<ClosedStretch> merged = new ArrayList<>();
        for (ClosedStretch next : sorted) {
            int last = merged.size() - 1;
            if (last < 0 || merged.get(last).toIn <= next.fromIn) {
                merged.add(next);
                continue;
            }
            ClosedStretch before = merged.get(last);
            merged.set(last, new ClosedStretch(before.fromIn, Math.max(before.toIn, next.toIn), before.also(next.why)));
        }
        return merged;
    }

    /** Each reason once, however many plugs stand close together. */
    private String also(String reason) {
        return List.of(why.split(AND, -1)).contains(reason) ? why : why + AND + reason;
    }

    boolean holds(double stationIn) {
        return fromIn + 1e-6 < stationIn && stationIn < toIn - 1e-6;
    }
}
