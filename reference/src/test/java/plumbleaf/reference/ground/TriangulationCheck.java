package plumbleaf.reference.ground;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.ConformingDelaunayTriangulationBuilder;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;
import plumbleaf.engine.geometry.Edge;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Triangle;
import plumbleaf.engine.geometry.Triangulation;

/**
 * Triangles of scattered points against a second program, with no tie that leaves a choice, and with a fixed edge that stands in both.
 *
 * Source: JTS Topology Suite 1.20.0, DelaunayTriangulationBuilder and ConformingDelaunayTriangulationBuilder.
 * Tolerance: the same triangles.
 */
class TriangulationCheck {
    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSameTrianglesAsASecondProgram(int seed) {
        List<PlanPoint> points = scattered(new Random(seed), 5 + seed);
        assertThat(ours(Triangulation.of(points))).isEqualTo(theirs(points));
    }

    /** An edge the second program finds by itself: forcing it changes nothing. */
    @ParameterizedTest
    @MethodSource("seeds")
    void forcingAnEdgeThatStandsChangesNothing(int seed) {
        List<PlanPoint> points = scattered(new Random(1000 + seed), 6 + seed);
        List<Edge> edges = Triangulation.of(points).edges();
        Triangulation forced = Triangulation.of(points, edges.subList(0, edges.size() / 2));
        assertThat(forced.refused()).isEmpty();
        assertThat(ours(forced)).isEqualTo(theirs(points));
    }

    /** A break line through open ground, which the second program keeps by adding points on it until every piece stands: no triangle of ours crosses it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aBreakLineIsKeptAsTheSecondProgramKeepsIt(int seed) {
        List<PlanPoint> points = scattered(new Random(2000 + seed), 12);
        GeometryFactory factory = new GeometryFactory();
        ConformingDelaunayTriangulationBuilder builder = new ConformingDelaunayTriangulationBuilder();
        builder.setSites(factory.createMultiPointFromCoords(coordinates(points)));
        Geometry line = factory.createLineString(
                new Coordinate[] {coordinate(points.get(0)), coordinate(points.get(points.size() - 1))});
        builder.setConstraints(line);
        Geometry theirs = builder.getTriangles(factory);
        for (int i = 0; i < theirs.getNumGeometries(); i++)
            assertThat(theirs.getGeometryN(i).crosses(line) && crossesInside(theirs.getGeometryN(i), line))
                    .isFalse();
        Triangulation ours = Triangulation.of(points, List.of(new Edge(0, points.size() - 1)));
        for (Triangle t : ours.triangles()) {
            Geometry triangle = factory.createPolygon(new Coordinate[] {
                coordinate(points.get(t.a())),
                coordinate(points.get(t.b())),
                coordinate(points.get(t.c())),
                coordinate(points.get(t.a()))
            });
            assertThat(crossesInside(triangle, line)).isFalse();
        }
    }

    private static boolean crossesInside(Geometry triangle, Geometry line) {
        return triangle.buffer(-1e-4).intersects(line);
    }

    private static Set<String> ours(Triangulation made) {
        TreeSet<String> triangles = new TreeSet<>();
        for (Triangle t : made.triangles())
            triangles.add(key(List.of(
                    made.points().get(t.a()),
                    made.points().get(t.b()),
                    made.points().get(t.c()))));
        return triangles;
    }

    private static Set<String> theirs(List<PlanPoint> points) {
        DelaunayTriangulationBuilder builder = new DelaunayTriangulationBuilder();
        builder.setSites(List.of(coordinates(points)));
        Geometry all = builder.getTriangles(new GeometryFactory());
        TreeSet<String> triangles = new TreeSet<>();
        for (int i = 0; i < all.getNumGeometries(); i++) {
            Coordinate[] corners = all.getGeometryN(i).getCoordinates();
            triangles.add(key(IntStream.range(0, 3)
                    .mapToObj(corner -> PlanPoint.inches(corners[corner].x, corners[corner].y))
                    .toList()));
        }
        return triangles;
    }

    private static String key(List<PlanPoint> corners) {
        TreeSet<String> sorted = new TreeSet<>();
        for (PlanPoint corner : corners) sorted.add(corner.xIn() + "/" + corner.yIn());
        return sorted.toString();
    }

    private static List<PlanPoint> scattered(Random random, int count) {
        List<PlanPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++)
            points.add(PlanPoint.inches(random.nextInt(8_000_000) / 4096.0, random.nextInt(8_000_000) / 4096.0));
        return points;
    }

    private static Coordinate coordinate(PlanPoint point) {
        return new Coordinate(point.xIn(), point.yIn());
    }

    private static Coordinate[] coordinates(List<PlanPoint> points) {
        return points.stream().map(TriangulationCheck::coordinate).toArray(Coordinate[]::new);
    }
}
