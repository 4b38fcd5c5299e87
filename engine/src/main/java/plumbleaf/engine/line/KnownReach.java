package plumbleaf.engine.line;

import java.util.Map;
import java.util.TreeMap;

/**
 * How far a bay may reach from a station, worked out once for each. Since the farthest station never falls as the post moves on, what is known of a post before and of
 * one behind mostly tells whether a bay is short enough, without asking anew: a mile of posts under a level top asks millions of times.
 */
final class KnownReach {
    private final BayReach reach;
    private final TreeMap<Double, Double> known = new TreeMap<>();

    KnownReach(BayReach reach) {
        this.reach = reach;
    }

    /** The farthest station that a bay from this one may end at. */
    double fromIn(double stationIn) {
        return known.computeIfAbsent(stationIn, reach::fromIn);
    }

    /** Whether a bay from one station may end at another. */
    boolean spans(double stationIn, double toIn) {
        Map.Entry<Double, Double> before = known.floorEntry(stationIn);
        if (before != null && before.getValue() >= toIn) return true;
        Map.Entry<Double, Double> behind = known.ceilingEntry(stationIn);
        if (behind != null && behind.getValue() < toIn) return false;
        return reach.spans(stationIn, toIn);
    }
}
