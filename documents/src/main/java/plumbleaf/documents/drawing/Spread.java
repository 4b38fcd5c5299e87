package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** Moves places along a line apart by a least distance, each as little as possible (least squares, by pooling neighbours). */
public final class Spread {
    private Spread() {}

    /** Wanted places in rising order; the answer keeps the order. */
    public static List<Double> apart(List<Double> wanted, double least) {
        List<Double> even = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) even.add(least);
        return apart(wanted, even, 0);
    }

    /** As {@link #apart(List, double)} for things of different widths, centred on their places, with a gap between. */
    public static List<Double> apart(List<Double> wanted, List<Double> widths, double gap) {
        List<Pool> pools = new ArrayList<>();
        double shift = 0;
        List<Double> shifts = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            if (i > 0) shift += (widths.get(i - 1) + widths.get(i)) / 2 + gap;
            shifts.add(shift);
            Pool pool = new Pool(wanted.get(i) - shift, 1);
            while (!pools.isEmpty() && pools.get(pools.size() - 1).mean > pool.mean)
                pool = pool.with(pools.remove(pools.size() - 1));
            pools.add(pool);
        }
        List<Double> places = new ArrayList<>();
        for (Pool pool : pools) for (int i = 0; i < pool.count; i++) places.add(pool.mean + shifts.get(places.size()));
        return List.copyOf(places);
    }

    /** As above, kept between two ends as far as there is room. */
    public static List<Double> within(List<Double> wanted, List<Double> widths, double gap, double from, double to) {
        List<Double> places = new ArrayList<>(apart(wanted, widths, gap));
        double least = from;
        for (int i = 0; i < places.size(); i++) {
            double half = widths.get(i) / 2;
            places.set(i, Math.max(places.get(i), least + half));
            least = places.get(i) + half + gap;
        }
        double most = to;
        for (int i = places.size() - 1; i >= 0; i--) {
            double half = widths.get(i) / 2;
            places.set(i, Math.min(places.get(i), most - half));
            most = places.get(i) - half - gap;
        }
        return List.copyOf(places);
    }

    private record Pool(double mean, int count) {
        Pool with(Pool other) {
            return new Pool((mean * count + other.mean * other.count) / (count + other.count), count + other.count);
        }
    }
}
