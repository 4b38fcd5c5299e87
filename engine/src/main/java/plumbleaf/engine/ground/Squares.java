package plumbleaf.engine.ground;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;

/**
 * Which of many things lie near a place: each is entered in the squares of a grid that its box covers. What is far from a place is not looked at; what is named
 * may still be a square too far, so whoever asks measures.
 */
final class Squares {
    private static final double SIDE_IN = 25 * 12.0;
    /** A thing over more squares than this is near everything: a single line across the whole map. */
    private static final int MOST_SQUARES = 400;

    private final Map<Long, List<Integer>> squares = new LinkedHashMap<>();
    private final List<Integer> everywhere = new ArrayList<>();

    /** Enters a thing by its number and its box. */
    void enter(int number, PlanPoint one, PlanPoint other) {
        long west = square(Math.min(one.xIn(), other.xIn()));
        long east = square(Math.max(one.xIn(), other.xIn()));
        long south = square(Math.min(one.yIn(), other.yIn()));
        long north = square(Math.max(one.yIn(), other.yIn()));
        if ((double) (east - west + 1) * (north - south + 1) > MOST_SQUARES) {
            everywhere.add(number);
            return;
        }
        for (long x = west; x <= east; x++) {
            for (long y = south; y <= north; y++)
                squares.computeIfAbsent(key(x, y), square -> new ArrayList<>()).add(number);
        }
    }

    /** Numbers of all things within reach of a place, and of some beyond, rising. */
    Iterable<Integer> near(PlanPoint place, Length reach) {
        TreeSet<Integer> found = new TreeSet<>(everywhere);
        long west = square(place.xIn() - reach.inches());
        long east = square(place.xIn() + reach.inches());
        long south = square(place.yIn() - reach.inches());
        long north = square(place.yIn() + reach.inches());
        if ((double) (east - west + 1) * (north - south + 1) > squares.size()) {
            squares.values().forEach(found::addAll);
            return found;
        }
        for (long x = west; x <= east; x++) {
            for (long y = south; y <= north; y++) found.addAll(squares.getOrDefault(key(x, y), List.of()));
        }
        return found;
    }

    private static long square(double inches) {
        return (long) Math.floor(inches / SIDE_IN);
    }

    /** Two whole numbers in one; maps are far smaller than what would make two squares share a key. */
    private static long key(long x, long y) {
        return x * (1L << 32) + y;
    }
}
