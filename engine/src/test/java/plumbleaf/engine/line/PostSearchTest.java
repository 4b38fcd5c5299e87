package plumbleaf.engine.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("slow")
class PostSearchTest {
    private static PostSearch.Outcome search(double length, double longest, ClosedStretch... closed) {
        return new PostSearch(0, length, List.of(closed), new KnownReach(from -> from + longest)).solve();
    }

    private static List<Double> stations(PostSearch.Outcome outcome) {
        return outcome.match(found -> found.stationsIn(), stuck -> List.of());
    }

    private static ClosedStretch closed(double from, double to) {
        return new ClosedStretch(from, to, "root");
    }

    @Test
    void openGroundIsCutIntoEqualBays() {
        assertThat(stations(search(40 * 12, 96))).containsExactly(0.0, 96.0, 192.0, 288.0, 384.0, 480.0);
        assertThat(stations(search(100, 96))).containsExactly(0.0, 50.0, 100.0);
        assertThat(stations(search(96, 96))).containsExactly(0.0, 96.0);
    }

    /** The middle lies in the roots: the post goes to the nearer edge, which makes the longer bay shorter. */
    @Test
    void aPostMayStandOnTheEdge() {
        assertThat(stations(search(200, 120, closed(95, 115)))).containsExactly(0.0, 95.0, 200.0);
        assertThat(stations(search(200, 120, closed(90, 105)))).containsExactly(0.0, 105.0, 200.0);
    }

    @Test
    void theBestMayBeOneShortBayAndTheRestEqual() {
        List<Double> posts = stations(search(300, 100, closed(70, 110)));
        assertThat(posts).hasSize(5).startsWith(0.0, 70.0).endsWith(300.0);
        for (int i = 2; i < 5; i++) assertThat(posts.get(i) - posts.get(i - 1)).isCloseTo(230 / 3.0, within(1e-9));
    }

    @Test
    void noWayPastNamesTheStretchAndTheBayItForces() {
        PostSearch.Outcome outcome = search(500, 96, closed(150, 260));
        PostSearch.Outcome.Stuck stuck = outcome.match(found -> null, s -> s);
        assertThat(stuck).isNotNull();
        assertThat(stuck.at()).isEqualTo(closed(150, 260));
        assertThat(stuck.forcedIn()).isEqualTo(110);
        assertThat(stuck.allowedIn()).isCloseTo(96, within(1e-9));
    }

    static IntStream seeds() {
        return IntStream.range(0, 1000);
    }

    /**
     * Every layout on a lattice of twelfths, by exhaustion. All edges lie on whole twelves, so that the best layout of up to four bays, equal between edges, lies
     * on the lattice.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void bruteForceFindsNothingBetter(int seed) {
        Random random = new Random(seed);
        int longest = 12 * (3 + random.nextInt(3));
        int length = 12 * (2 + random.nextInt(4 * longest / 12 - 1));
        List<ClosedStretch> closed = randomStretches(random, length, random.nextInt(7));
        PostSearch.Outcome outcome = new PostSearch(0, length, closed, new KnownReach(from -> from + longest)).solve();
        Lattice lattice = new Lattice(length, closed, from -> from + longest);
        for (int bays = 1; bays <= 4 && !lattice.found(); bays++) lattice.tryBays(bays);
        List<Double> posts = stations(outcome);
        if (!lattice.found()) {
            assertThat(posts.size() - 1).as("no layout of up to four bays").matches(bays -> bays == -1 || bays > 4);
            return;
        }
        assertThat(posts.size() - 1).isEqualTo(lattice.bays);
        assertThat(largest(posts)).isCloseTo(lattice.bestLargest, within(1e-5));
        assertThat(squares(posts)).isCloseTo(lattice.bestSquares, within(1e-3));
        assertThat(outcome.<Boolean>match(found -> found.proven(), stuck -> false))
                .isTrue();
    }

    /** With a limit that changes along the run: as few bays, and as short a longest one, as exhaustion finds on a fine lattice. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aChangingLimitIsKeptAndTheLongestBayIsLeast(int seed) {
        Random random = new Random(seed);
        int length = 60 + random.nextInt(120);
        int tight = 20 + random.nextInt(30);
        int wide = tight + random.nextInt(20);
        int change = random.nextInt(length);
        DoubleUnaryOperator reach =
                from -> from < change ? Math.max(from + tight, Math.min(change, from + wide)) : from + wide;
        List<ClosedStretch> closed = randomStretches(random, length, random.nextInt(3));
        PostSearch.Outcome outcome = new PostSearch(0, length, closed, new KnownReach(reach::applyAsDouble)).solve();
        List<Double> posts = stations(outcome);
        Lattice lattice = new Lattice(length, closed, reach);
        for (int bays = 1; bays <= 4 && !lattice.found(); bays++) lattice.tryBays(bays);
        if (posts.isEmpty()) assertThat(lattice.found()).isFalse();
        for (int i = 1; i < posts.size(); i++)
            assertThat(posts.get(i)).isLessThanOrEqualTo(reach.applyAsDouble(posts.get(i - 1)) + 1e-5);
        for (double post : posts.subList(posts.isEmpty() ? 0 : 1, Math.max(0, posts.size() - 1)))
            assertThat(closed).noneMatch(stretch -> stretch.holds(post));
        if (lattice.found()) {
            assertThat(posts.size() - 1).isLessThanOrEqualTo(lattice.bays);
            if (posts.size() - 1 == lattice.bays)
                assertThat(largest(posts)).isLessThanOrEqualTo(lattice.bestLargest + 1e-5);
        }
    }

    static IntStream longLegs() {
        return IntStream.range(0, 20);
    }

    /** Going as far as allowed each time takes as many bays, and a hair less than the longest bay found does not do. */
    @ParameterizedTest
    @MethodSource("longLegs")
    void onAMileOfChangingLimitsTheBaysAreFewestAndTheLongestIsLeast(int seed) {
        Random random = new Random(seed);
        double length = 12 * (2000 + random.nextInt(3280));
        double wave = 600 + 4000 * random.nextDouble();
        BayReach reach = from -> from + 80 + 12 * Math.sin(from / wave);
        List<ClosedStretch> closed = randomStretches(random, (int) length, random.nextInt(30));
        List<Double> posts = stations(new PostSearch(0, length, closed, new KnownReach(reach)).solve());
        assertThat(posts.size() - 1).isEqualTo(fewest(length, closed, reach, Double.POSITIVE_INFINITY));
        for (int i = 1; i < posts.size(); i++)
            assertThat(posts.get(i)).isLessThanOrEqualTo(reach.fromIn(posts.get(i - 1)) + 1e-5);
        for (double post : posts.subList(1, posts.size() - 1))
            assertThat(closed).noneMatch(stretch -> stretch.holds(post));
        assertThat(fewest(length, closed, reach, largest(posts) - 1e-4)).isGreaterThan(posts.size() - 1);
    }

    private static int fewest(double length, List<ClosedStretch> closed, BayReach reach, double longest) {
        int bays = 0;
        for (double at = 0; at < length - 1e-6; bays++) {
            double next = Math.min(reach.fromIn(at), at + longest);
            for (ClosedStretch stretch : closed)
                if (next < length && stretch.fromIn() < next && next < stretch.toIn()) next = stretch.fromIn();
            if (next <= at) return Integer.MAX_VALUE;
            at = next;
        }
        return bays;
    }

    private static List<ClosedStretch> randomStretches(Random random, int length, int count) {
        List<ClosedStretch> closed = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int from = 12 * random.nextInt(Math.max(1, length / 12));
            closed.add(new ClosedStretch(from, from + 12 * (1 + random.nextInt(2)), "root"));
        }
        return ClosedStretch.merged(closed);
    }

    private static double largest(List<Double> posts) {
        double largest = 0;
        for (int i = 1; i < posts.size(); i++) largest = Math.max(largest, posts.get(i) - posts.get(i - 1));
        return largest;
    }

    private static double squares(List<Double> posts) {
        double sum = 0;
        for (int i = 1; i < posts.size(); i++) {
            double bay = posts.get(i) - posts.get(i - 1);
            sum += bay * bay;
        }
        return sum;
    }

    /** Tries every set of whole stations. */
    private static final class Lattice {
        private final int length;
        private final List<ClosedStretch> closed;
        private final DoubleUnaryOperator reach;
        private int bays;
        private double bestLargest = Double.POSITIVE_INFINITY;
        private double bestSquares = Double.POSITIVE_INFINITY;

        Lattice(int length, List<ClosedStretch> closed, DoubleUnaryOperator reach) {
            this.length = length;
            this.closed = closed;
            this.reach = reach;
        }

        boolean found() {
            return bestLargest < Double.POSITIVE_INFINITY;
        }

        void tryBays(int count) {
            bays = count;
            go(0, count, 0, 0);
        }

        private void go(int at, int left, double largest, double squares) {
            if (largest > bestLargest) return;
            int most = (int) Math.floor(reach.applyAsDouble(at) + 1e-9);
            if (left == 1) {
                if (length <= most)
                    settle(Math.max(largest, length - at), squares + (length - at) * (double) (length - at));
                return;
            }
            for (int next = at + 1; next <= Math.min(most, length - 1); next++) {
                int here = next;
                if (closed.stream().anyMatch(stretch -> stretch.holds(here))) continue;
                double bay = next - at;
                go(next, left - 1, Math.max(largest, bay), squares + bay * bay);
            }
        }

        private void settle(double largest, double squares) {
            if (largest < bestLargest || (largest == bestLargest && squares < bestSquares)) {
                bestLargest = largest;
                bestSquares = squares;
            }
        }
    }
}
