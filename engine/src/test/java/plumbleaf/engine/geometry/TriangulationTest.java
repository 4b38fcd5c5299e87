package plumbleaf.engine.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TriangulationTest {
    @Test
    void fourOnACircleTakeTheDiagonalFromTheSmallest() {
        Triangulation square = Triangulation.of(points(0, 0, 48, 0, 48, 48, 0, 48));
        assertThat(square.edges()).contains(new Edge(0, 2)).doesNotContain(new Edge(1, 3));
        Triangulation renumbered = Triangulation.of(points(48, 0, 48, 48, 0, 48, 0, 0));
        assertThat(renumbered.edges()).contains(new Edge(0, 2));
    }

    @Test
    void manyOnACircleMakeAFanFromTheSmallest() {
        Triangulation eight = Triangulation.of(points(7, 1, -7, 1, 5, 5, 1, -7, -1, 7, -5, -5, 7, -1, -7, -1));
        assertThat(eight.triangles()).hasSize(6).allMatch(t -> t.a() == 0);
    }

    @Test
    void pointsOnOneLineMakeNoTriangle() {
        assertThat(Triangulation.of(points(0, 0, 5, 5, 12, 12, 3, 3)).triangles())
                .isEmpty();
    }

    @Test
    void onePlaceTwiceIsAFault() {
        assertThatThrownBy(() -> Triangulation.of(points(0, 0, 5, 5, 0, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Points 0 and 2 are one place");
    }

    @Test
    void aFixedEdgeStandsAgainstTheCircleRule() {
        List<PlanPoint> flat = points(0, 0, 100, 0, 50, 10, 50, -10);
        assertThat(Triangulation.of(flat).edges()).contains(new Edge(2, 3)).doesNotContain(new Edge(0, 1));
        assertThat(Triangulation.of(flat, List.of(new Edge(0, 1))).edges()).contains(new Edge(0, 1));
    }

    @Test
    void ofTwoCrossingFixedEdgesTheEarlierWins() {
        Triangulation crossed =
                Triangulation.of(points(0, 0, 10, 0, 10, 10, 0, 10), List.of(new Edge(1, 3), new Edge(0, 2)));
        assertThat(crossed.fixed()).containsExactly(new Edge(1, 3));
        assertThat(crossed.refused()).containsExactly(new Edge(0, 2));
    }

    @Test
    void anEdgeThroughAPointIsSplitThere() {
        Triangulation split = Triangulation.of(points(0, 0, 10, 0, 20, 0, 10, 8, 10, -8), List.of(new Edge(0, 2)));
        assertThat(split.fixed()).containsExactly(new Edge(0, 1), new Edge(1, 2));
    }

    @Test
    void aPlaceOnAnEdgeBelongsToTheFirstTriangle() {
        Triangulation square = Triangulation.of(points(0, 0, 48, 0, 48, 48, 0, 48));
        assertThat(square.triangleAt(PlanPoint.inches(24, 24))).contains(0);
        assertThat(square.triangleAt(PlanPoint.inches(10, 40))).contains(1);
        assertThat(square.triangleAt(PlanPoint.inches(49, 40))).isEmpty();
    }

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    /** Random points on a coarse grid, so that many lie on one line or circle, with random fixed edges. */
    @ParameterizedTest
    @MethodSource("seeds")
    void everyTriangulationIsWholeAndKeepsTheCircleRule(int seed) {
        Random random = new Random(seed);
        List<PlanPoint> points = scattered(random, 4 + random.nextInt(40), 3 + random.nextInt(12));
        List<Edge> wanted = new ArrayList<>();
        for (int i = 0; i < seed % 5; i++) {
            int a = random.nextInt(points.size());
            int b = random.nextInt(points.size());
            if (a != b) wanted.add(new Edge(a, b));
        }
        Triangulation made = Triangulation.of(points, wanted);
        if (made.triangles().isEmpty()) return;
        int hull = made.hull().size();
        assertThat(made.triangles()).hasSize(2 * points.size() - 2 - hull);
        assertThat(made.edges()).containsAll(made.fixed());
        for (Edge edge : made.edges()) assertKeepsTheCircleRule(made, edge);
        assertThat(area(made)).isEqualTo(hullArea(made));
        for (Edge edge : wanted) {
            if (!made.refused().contains(edge)) assertStandsWhole(made, edge);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void movingTheSiteChangesNothing(int seed) {
        Random random = new Random(seed);
        List<PlanPoint> points = scattered(random, 12, 9);
        List<PlanPoint> moved = points.stream()
                .map(p -> PlanPoint.inches(p.xIn() + 4096, p.yIn() - 1024))
                .toList();
        assertThat(Triangulation.of(moved).triangles())
                .isEqualTo(Triangulation.of(points).triangles());
    }

    private static void assertKeepsTheCircleRule(Triangulation made, Edge edge) {
        if (made.fixed().contains(edge)) return;
        List<Integer> tips = new ArrayList<>();
        for (Triangle t : made.triangles()) {
            List<Integer> corners = List.of(t.a(), t.b(), t.c());
            if (corners.contains(edge.from()) && corners.contains(edge.to()))
                tips.add(t.a() + t.b() + t.c() - edge.from() - edge.to());
        }
        if (tips.size() < 2) return;
        double inside = inCircle(made, edge.from(), edge.to(), tips.get(0), tips.get(1));
        assertThat(inside).as("edge %s", edge).isLessThanOrEqualTo(0);
        if (inside == 0) {
            int smallest = Math.min(Math.min(edge.from(), edge.to()), Math.min(tips.get(0), tips.get(1)));
            assertThat(smallest).isEqualTo(edge.from());
        }
    }

    /** Small whole numbers, so that plain arithmetic is exact here: a second way to the same answer. */
    private static double inCircle(Triangulation made, int a, int b, int c, int d) {
        double[][] rows = new double[3][];
        int[] corners = {a, b, c};
        PlanPoint last = made.points().get(d);
        for (int i = 0; i < 3; i++) {
            PlanPoint p = made.points().get(corners[i]);
            double dx = p.xIn() - last.xIn();
            double dy = p.yIn() - last.yIn();
            rows[i] = new double[] {dx, dy, dx * dx + dy * dy};
        }
        double det = rows[0][0] * (rows[1][1] * rows[2][2] - rows[1][2] * rows[2][1])
                - rows[0][1] * (rows[1][0] * rows[2][2] - rows[1][2] * rows[2][0])
                + rows[0][2] * (rows[1][0] * rows[2][1] - rows[1][1] * rows[2][0]);
        return det * Math.signum(turn(made, a, b, c));
    }

    private static double turn(Triangulation made, int a, int b, int c) {
        PlanPoint p = made.points().get(a);
        PlanPoint q = made.points().get(b);
        PlanPoint r = made.points().get(c);
        return (q.xIn() - p.xIn()) * (r.yIn() - p.yIn()) - (q.yIn() - p.yIn()) * (r.xIn() - p.xIn());
    }

    private static double area(Triangulation made) {
        double twice = 0;
        for (Triangle t : made.triangles()) {
            double turn = turn(made, t.a(), t.b(), t.c());
            assertThat(turn).isPositive();
            twice += turn;
        }
        return twice;
    }

    private static double hullArea(Triangulation made) {
        double twice = 0;
        List<Integer> hull = made.hull();
        for (int i = 2; i < hull.size(); i++) twice += turn(made, hull.get(0), hull.get(i - 1), hull.get(i));
        return twice;
    }

    private static void assertStandsWhole(Triangulation made, Edge wanted) {
        PlanPoint from = made.points().get(wanted.from());
        PlanPoint to = made.points().get(wanted.to());
        double covered = 0;
        for (Edge edge : made.fixed()) {
            PlanPoint a = made.points().get(edge.from());
            PlanPoint b = made.points().get(edge.to());
            boolean on = turn(made, wanted.from(), wanted.to(), edge.from()) == 0
                    && turn(made, wanted.from(), wanted.to(), edge.to()) == 0;
            if (!on) continue;
            double span = from.inchesTo(to);
            boolean between = from.inchesTo(a) <= span + 1e-9
                    && to.inchesTo(a) <= span + 1e-9
                    && from.inchesTo(b) <= span + 1e-9
                    && to.inchesTo(b) <= span + 1e-9;
            if (between) covered += a.inchesTo(b);
        }
        assertThat(covered).isCloseTo(from.inchesTo(to), within(1e-9));
    }

    private static List<PlanPoint> scattered(Random random, int count, int grid) {
        TreeSet<Integer> cells = new TreeSet<>();
        for (int i = 0; i < count; i++) cells.add(random.nextInt(grid * grid));
        List<Integer> shuffled = new ArrayList<>(cells);
        Collections.shuffle(shuffled, random);
        return shuffled.stream()
                .map(cell -> PlanPoint.inches(cell / grid * 16, cell % grid * 16))
                .toList();
    }

    private static List<PlanPoint> points(double... xy) {
        return IntStream.range(0, xy.length / 2)
                .mapToObj(i -> PlanPoint.inches(xy[2 * i], xy[2 * i + 1]))
                .toList();
    }
}
