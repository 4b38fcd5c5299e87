package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of fence whose end bays lean back to a gate that is set back: how much longer it is than its stations say, and which station a length along it lies at.
 *
 * @param stations of its posts
 * @param extra how much more than by the stations the fence is long up to each of them
 */
record Leaning(List<Double> stations, List<Double> extra) {
    Leaning {
        stations = List.copyOf(stations);
        extra = List.copyOf(extra);
    }

    static Leaning of(List<Stop> stops, int first, int last) {
        List<Double> stations = new ArrayList<>();
        List<Double> extra = new ArrayList<>();
        double more = 0;
        for (int i = first; i <= last; i++) {
            Stop stop = stops.get(i);
            if (i > first) {
                Stop before = stops.get(i - 1);
                more += before.levelTo(stop) - (stop.stationIn() - before.stationIn());
            }
            stations.add(stop.stationIn());
            extra.add(more);
        }
        return new Leaning(stations, extra);
    }

    /** Inches; zero where nothing leans. */
    double longer() {
        return extra.get(extra.size() - 1);
    }

    /** The station of a place that lies so far along the fence, measured as stations are up to the first post. */
    double stationOf(double alongIn) {
        if (longer() == 0) return alongIn;
        int bay = 0;
        while (bay + 2 < stations.size() && alongIn > stations.get(bay + 1) + extra.get(bay + 1)) bay++;
        double from = stations.get(bay) + extra.get(bay);
        double to = stations.get(bay + 1) + extra.get(bay + 1);
        double share = (alongIn - from) / (to - from);
        return stations.get(bay) + share * (stations.get(bay + 1) - stations.get(bay));
    }
}
