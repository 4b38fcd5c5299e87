package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A stretch of a run that no post may stand in, hole counted; a post may stand on its edge.
 *
 * @param pulled what pulls all the old concrete that closes it, as edits of the job; none where something else closes it too
 */
record ClosedStretch(double fromIn, double toIn, String why, List<String> pulled) {
    private static final String AND = " and ";

    ClosedStretch {
        pulled = List.copyOf(pulled);
    }

    /** Closed by what nobody pulls. */
    ClosedStretch(double fromIn, double toIn, String why) {
        this(fromIn, toIn, why, List.of());
    }

    /** As much of it as lies between two stations. */
    ClosedStretch between(double firstIn, double lastIn) {
        return new ClosedStretch(firstIn, lastIn, why, pulled);
    }

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
            merged.set(last, before.with(next));
        }
        return merged;
    }

    private ClosedStretch with(ClosedStretch next) {
        List<String> both = new ArrayList<>(pulled);
        for (String edit : next.pulled) if (!both.contains(edit)) both.add(edit);
        boolean allOfIt = !pulled.isEmpty() && !next.pulled.isEmpty();
        return new ClosedStretch(fromIn, Math.max(toIn, next.toIn), also(next.why), allOfIt ? both : List.of());
    }

    /** Each reason once, however many plugs stand close together. */
    private String also(String reason) {
        return List.of(why.split(AND, -1)).contains(reason) ? why : why + AND + reason;
    }

    boolean holds(double stationIn) {
        return fromIn + 1e-6 < stationIn && stationIn < toIn - 1e-6;
    }
}
