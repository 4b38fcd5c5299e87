package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import plumbleaf.engine.geometry.Crossing;

/**
 * Where posts go between two fixed ones: the fewest bays; of those the least largest bay; of those the least sum of squared departures from equal bays. A
 * post may stand on the edge of a closed stretch, not inside it.
 *
 * <p>Why it is exact. The farthest station that may be reached from a post never falls as the post moves on, so going as far as allowed each time gives
 * the fewest bays, and, with the bay held to a trial length, tells whether that length is enough: the least such length is found by trying. Between two
 * neighbouring posts that stand on edges (or on the fixed ends) the squares are least when the bays between them are equal, since they are convex, and a
 * common length within the limit exists exactly when their mean is. So the best layout is a chain of edges with equal bays between, and a table over edges
 * and number of bays finds it. Where the limit differs from place to place, equal bays may break it: then stations of the two farthest-reaching chains join
 * the edges, and the result is marked as proven for the first two measures only, unless it equals what would be best with one limit everywhere.
 *
 * <p>Plain numbers inside, all stations in inches. Check: PostSearchTest, against every layout on a lattice.
 */
final class PostSearch {
    /** Rounding of sums of stations, well under a nanometre's worth of carpentry: a millionth of an inch. */
    private static final double ROUNDING_IN = 1e-6;

    /** How near the least longest bay is found: far below that rounding. */
    private static final double NEAR_IN = 1e-10;

    /**
     * Where posts of the two farthest-reaching chains count as edges, equal bays go past so many of them at most: evenness over more than five hundred feet nobody sees,
     * and a mile has a quarter of a million pairs. Judgement.
     */
    private static final int NEAR_EDGES = 64;

    private final double startIn;
    private final double endIn;
    private final List<ClosedStretch> closed;
    private final KnownReach reach;

    /**
     * @param closed stretches no post may stand in, sorted, none overlapping another
     * @param reach how far a bay from a station may go
     */
    PostSearch(double startIn, double endIn, List<ClosedStretch> closed, KnownReach reach) {
        this.startIn = startIn;
        this.endIn = endIn;
        this.closed = closed;
        this.reach = reach;
    }

    /** How a search came out. */
    sealed interface Outcome {
        <T> T match(Function<Found, T> found, Function<Stuck, T> stuck);

        /** Stations of all posts, both fixed ones included. */
        record Found(List<Double> stationsIn, boolean proven) implements Outcome {
            public Found {
                stationsIn = List.copyOf(stationsIn);
            }

            @Override
            public <T> T match(Function<Found, T> found, Function<Stuck, T> stuck) {
                return found.apply(this);
            }
        }

        /** No post can be set past this stretch: the shortest bay over it, and the longest allowed there. */
        record Stuck(ClosedStretch at, double forcedIn, double allowedIn) implements Outcome {
            @Override
            public <T> T match(Function<Found, T> found, Function<Stuck, T> stuck) {
                return stuck.apply(this);
            }
        }
    }

    Outcome solve() {
        List<Double> farthest = new ArrayList<>();
        double at = startIn;
        farthest.add(at);
        while (at < endIn) {
            double next = next(at, Double.POSITIVE_INFINITY);
            if (next <= at + ROUNDING_IN) return stuck(at);
            at = next;
            farthest.add(at);
        }
        int bays = farthest.size() - 1;
        double longest = leastLongest(bays, longestOf(farthest));
        List<Double> chain = chain(longest, bays);
        return best(bays, longest, chain);
    }

    /** As far as one bay goes from a station, at most to the end. */
    private double next(double from, double longestIn) {
        return next(from, longestIn, reach);
    }

    private double next(double from, double longestIn, KnownReach limit) {
        double wanted = Math.min(from + longestIn, endIn);
        double exact = limit.spans(from, wanted) ? wanted : Math.min(limit.fromIn(from), wanted);
        double reach = exact + ROUNDING_IN;
        if (reach >= endIn) return endIn;
        int before = countBefore(reach);
        if (before > 0 && reach < closed.get(before - 1).toIn())
            return Math.max(from, closed.get(before - 1).fromIn());
        return exact;
    }

    /** How many closed stretches begin before a station, by halving. */
    private int countBefore(double station) {
        int low = 0;
        int high = closed.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (closed.get(middle).fromIn() < station) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    private Outcome stuck(double at) {
        double reach = this.reach.fromIn(at);
        for (ClosedStretch stretch : closed) {
            if (stretch.fromIn() <= at + ROUNDING_IN && at < stretch.toIn() && reach < stretch.toIn()) {
                double forced = Math.min(stretch.toIn(), endIn) - Math.max(stretch.fromIn(), startIn);
                return new Outcome.Stuck(stretch, forced, reach - at);
            }
        }
        return new Outcome.Stuck(new ClosedStretch(at, reach, "the spacing limit"), endIn - at, reach - at);
    }

    private static double longestOf(List<Double> posts) {
        double longest = 0;
        for (int i = 1; i < posts.size(); i++) longest = Math.max(longest, posts.get(i) - posts.get(i - 1));
        return longest;
    }

    /**
     * How much farther than to the end so many bays go when none is longer than a trial length; below zero where they do not reach it. It never falls as that length grows.
     */
    private double beyondEnd(double longestIn, int bays) {
        double at = startIn;
        for (int left = bays; left > 0; left--) {
            double next = next(at, longestIn);
            if (next >= endIn) return at + left * longestIn - endIn + 2 * ROUNDING_IN;
            if (next <= at + ROUNDING_IN / 2) break;
            at = next;
        }
        return at - endIn;
    }

    /** @param enough a length with which so many bays do reach the end */
    private double leastLongest(int bays, double enough) {
        double equal = (endIn - startIn) / bays;
        double atEqual = beyondEnd(equal, bays);
        double atEnough = beyondEnd(enough, bays);
        if (atEqual > 0) return equal;
        if (atEnough <= 0) return enough;
        return Crossing.of(trial -> beyondEnd(trial, bays), equal, atEqual, enough, atEnough, NEAR_IN)
                .above();
    }

    /** The farthest-reaching posts with that longest bay: one layout of so many bays. */
    private List<Double> chain(double longestIn, int bays) {
        List<Double> posts = new ArrayList<>();
        double at = startIn;
        for (int i = 0; i < bays && at < endIn; i++) {
            at = next(at, longestIn);
            posts.add(at);
        }
        return posts;
    }

    private Outcome best(int bays, double longest, List<Double> chain) {
        TreeSet<Double> edges = new TreeSet<>();
        edges.add(startIn);
        edges.add(endIn);
        for (ClosedStretch stretch : closed) {
            if (isOpen(stretch.fromIn())) edges.add(stretch.fromIn());
            if (isOpen(stretch.toIn())) edges.add(stretch.toIn());
        }
        Table real = new Table(new ArrayList<>(edges), bays, longest, reach);
        if (real.isSolved() && real.squares() <= leastSquares(new ArrayList<>(edges), bays, longest) + ROUNDING_IN)
            return new Outcome.Found(real.stations(), true);
        edges.addAll(chain);
        Table wider = new Table(new ArrayList<>(edges), bays, longest, reach, NEAR_EDGES);
        return new Outcome.Found(wider.stations(), false);
    }

    /** The least squares of any layout, were no limit tighter than the longest bay. */
    private double leastSquares(List<Double> edges, int bays, double longest) {
        double equal = (endIn - startIn) * (endIn - startIn) / bays;
        if (edges.size() == 2) return equal;
        return new Table(edges, bays, longest, new KnownReach(from -> Double.POSITIVE_INFINITY)).squares();
    }

    private boolean isOpen(double station) {
        if (station <= startIn || station >= endIn) return false;
        int before = countBefore(station - ROUNDING_IN);
        return before == 0 || station >= closed.get(before - 1).toIn() - ROUNDING_IN;
    }

    /**
     * Least sum of squares for each number of bays to each edge, with equal bays between neighbouring edges. Of the numbers of bays only those that leave enough
     * for the rest are looked at, which are few: so the work hardly grows with the number of bays.
     */
    private final class Table {
        private final List<Double> edges;
        private final int bays;
        private final double longestIn;
        private final KnownReach reach;
        private final int[] fewest;
        private final int[] most;
        private final double[][] least;
        private final int[][] fromEdge;
        private final int[][] equalBays;

        Table(List<Double> edges, int bays, double longestIn, KnownReach reach) {
            this(edges, bays, longestIn, reach, edges.size());
        }

        /** @param farthest how many edges on equal bays may go at most */
        Table(List<Double> edges, int bays, double longestIn, KnownReach reach, int farthest) {
            this.edges = edges;
            this.bays = bays;
            this.longestIn = longestIn + 4 * ROUNDING_IN;
            this.reach = reach;
            int count = edges.size();
            fewest = new int[count];
            most = new int[count];
            least = new double[count][];
            fromEdge = new int[count][];
            equalBays = new int[count][];
            countBays();
            for (int edge = 0; edge < count; edge++) {
                int width = Math.max(0, most[edge] - fewest[edge] + 1);
                least[edge] = new double[width];
                fromEdge[edge] = new int[width];
                equalBays[edge] = new int[width];
                Arrays.fill(least[edge], Double.POSITIVE_INFINITY);
            }
            if (most[0] >= 0) least[0][0] = 0;
            for (int to = 1; to < count; to++) {
                for (int from = Math.max(0, to - farthest); from < to; from++) joinAll(from, to);
            }
        }

        /**
         * The fewest bays to each edge and from it to the end, by going as far as allowed each time, forwards and backwards. Where their sum is the number of bays, as it mostly is, an edge is
         * reached with one number of bays alone.
         */
        private void countBays() {
            int last = edges.size() - 1;
            Arrays.fill(fewest, Integer.MAX_VALUE / 2);
            double at = startIn;
            int edge = 0;
            for (int used = 0; edge <= last; used++) {
                while (edge <= last && edges.get(edge) <= at + ROUNDING_IN) fewest[edge++] = used;
                double next = next(at, longestIn, reach);
                if (next <= at + ROUNDING_IN / 2) break;
                at = next;
            }
            List<Double> latest = latestFirst();
            int left = 0;
            for (edge = last; edge >= 0; edge--) {
                while (left < latest.size() && edges.get(edge) < latest.get(left) - ROUNDING_IN) left++;
                most[edge] = left < latest.size() ? bays - left : -1;
            }
        }

        /** Before which station a post must not stand if none, one, two ... bays are to reach the end from it; a hair too early where it is found by halving. */
        private List<Double> latestFirst() {
            List<Double> all = new ArrayList<>();
            double at = endIn;
            all.add(at);
            while (at > startIn && all.size() <= bays) {
                double before = open(earliest(at));
                if (before >= at - ROUNDING_IN / 2) break;
                all.add(before);
                at = before;
            }
            return all;
        }

        /** The first station from which one bay reaches another station. */
        private double earliest(double to) {
            double no = Math.max(startIn, to - longestIn);
            if (reach.spans(no, to - ROUNDING_IN)) return no;
            double yes = to;
            while (yes - no > ROUNDING_IN / 4) {
                double middle = (no + yes) / 2;
                if (reach.spans(middle, to - ROUNDING_IN)) yes = middle;
                else no = middle;
            }
            return no;
        }

        /** The first station from here on where a post may stand. */
        private double open(double station) {
            if (station <= startIn || isOpen(station)) return station;
            return Math.min(
                    endIn, closed.get(countBefore(station - ROUNDING_IN) - 1).toIn());
        }

        private void joinAll(int from, int to) {
            if (least[from].length == 0 || least[to].length == 0) return;
            int first = Math.max(1, fewest[to] - most[from]);
            for (int count = first; count <= most[to] - fewest[from]; count++) join(from, to, count);
        }

        private void join(int from, int to, int count) {
            double bay = (edges.get(to) - edges.get(from)) / count;
            if (bay > longestIn || bay <= ROUNDING_IN) return;
            int low = Math.max(fewest[from], fewest[to] - count);
            int high = Math.min(most[from], most[to] - count);
            boolean betters = false;
            for (int before = low; before <= high; before++)
                betters |= least[from][before - fewest[from]] + count * bay * bay
                        < least[to][before + count - fewest[to]] - ROUNDING_IN;
            if (!betters || !stands(from, count, bay)) return;
            for (int before = low; before <= high; before++) {
                double squares = least[from][before - fewest[from]] + count * bay * bay;
                int at = before + count - fewest[to];
                if (squares < least[to][at] - ROUNDING_IN) {
                    least[to][at] = squares;
                    fromEdge[to][at] = from;
                    equalBays[to][at] = count;
                }
            }
        }

        /** Near the ends, where posts stand closest, equal bays break the limit first: the last bay is looked at after the first one. */
        private boolean stands(int from, int count, double bay) {
            if (!spans(from, 0, bay) || !spans(from, count - 1, bay)) return false;
            if (!isClear(edges.get(from), count, bay)) return false;
            for (int i = 1; i < count - 1; i++) if (!spans(from, i, bay)) return false;
            return true;
        }

        private boolean spans(int from, int before, double bay) {
            double post = edges.get(from) + before * bay;
            return reach.spans(post, post + bay - 2 * ROUNDING_IN);
        }

        /** Looks at the posts about each closed stretch only, of which there are fewer than posts. */
        private boolean isClear(double first, int count, double bay) {
            double last = first + count * bay;
            for (int i = countBefore(first); i < closed.size() && closed.get(i).fromIn() < last; i++) {
                int from = (int) Math.max(1, Math.floor((closed.get(i).fromIn() - first) / bay));
                int to = (int) Math.min(count - 1, Math.ceil((closed.get(i).toIn() - first) / bay));
                for (int post = from; post <= to; post++) {
                    if (!isOpen(first + post * bay)) return false;
                }
            }
            return true;
        }

        boolean isSolved() {
            return squares() < Double.POSITIVE_INFINITY;
        }

        double squares() {
            int end = edges.size() - 1;
            int at = bays - fewest[end];
            return at < 0 || at >= least[end].length ? Double.POSITIVE_INFINITY : least[end][at];
        }

        List<Double> stations() {
            if (!isSolved()) throw new IllegalStateException("A layout that was reached is not in the table");
            List<Double> stations = new ArrayList<>();
            int to = edges.size() - 1;
            int left = bays;
            while (left > 0) {
                int from = fromEdge[to][left - fewest[to]];
                int count = equalBays[to][left - fewest[to]];
                double bay = (edges.get(to) - edges.get(from)) / count;
                stations.add(edges.get(to));
                for (int i = count - 1; i > 0; i--) stations.add(edges.get(from) + i * bay);
                left -= count;
                to = from;
            }
            stations.add(startIn);
            Collections.reverse(stations);
            return stations;
        }
    }
}
