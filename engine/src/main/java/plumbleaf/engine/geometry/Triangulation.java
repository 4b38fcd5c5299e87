package plumbleaf.engine.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.quantity.Length;

/**
 * A constrained Delaunay triangulation: the one set of triangles over all points in which every fixed edge stands and no triangle's circle holds a point
 * that can be seen from inside it. Four on one circle: the diagonal from the smallest point, that is the first in the list.
 *
 * @param points all of different places
 * @param triangles by their corners; none when all points lie on one line
 * @param fixed the edges that were forced, split at the points they pass through
 * @param refused edges that would have crossed a fixed one, at least in part
 */
public record Triangulation(List<PlanPoint> points, List<Triangle> triangles, List<Edge> fixed, List<Edge> refused) {
    public Triangulation {
        points = List.copyOf(points);
        triangles = List.copyOf(triangles);
        fixed = List.copyOf(fixed);
        refused = List.copyOf(refused);
    }

    public static Triangulation of(List<PlanPoint> points) {
        return of(points, List.of());
    }

    /** Earlier edges win where two cross. */
    public static Triangulation of(List<PlanPoint> points, List<Edge> edges) {
        if (points.isEmpty()) return new Triangulation(points, List.of(), List.of(), List.of());
        Mesh mesh = new Mesh(points);
        List<Triangle> free = mesh.triangles();
        if (free.isEmpty()) return new Triangulation(points, free, List.of(), edges);
        List<Edge> refused = new ArrayList<>();
        for (Edge edge : edges) {
            if (mesh.force(edge).isPresent()) refused.add(edge);
        }
        mesh.settle();
        return new Triangulation(points, mesh.triangles(), mesh.fixedEdges(), refused);
    }

    /**
     * Without the triangles at the hull that are lower than this over their longest side: points of one line, but for rounding. The hull may then turn inward by as
     * much; none may be left.
     */
    public Triangulation withoutSlivers(Length thinnerThan) {
        return new Triangulation(points, HullSlivers.off(points, triangles, thinnerThan), fixed, refused);
    }

    /** The triangle that holds a place; on an edge or corner the first of those that touch it. */
    public Optional<Integer> triangleAt(PlanPoint place) {
        long px = place.eastNanometres();
        long py = place.northNanometres();
        for (int i = 0; i < triangles.size(); i++) {
            Triangle t = triangles.get(i);
            boolean inside = true;
            for (int side = 0; side < 3 && inside; side++) {
                PlanPoint from = points.get(t.corner(side));
                PlanPoint to = points.get(t.corner((side + 1) % 3));
                inside = Predicates.side(
                                from.eastNanometres(),
                                from.northNanometres(),
                                to.eastNanometres(),
                                to.northNanometres(),
                                px,
                                py)
                        >= 0;
            }
            if (inside) return Optional.of(i);
        }
        return Optional.empty();
    }

    /** Every edge once: of one that two triangles share, the one that has it from the smaller point says it. */
    public List<Edge> edges() {
        List<Edge> all = new ArrayList<>();
        for (Triangle t : triangles)
            for (int side = 0; side < 3; side++) {
                int from = t.corner(side);
                int to = t.corner((side + 1) % 3);
                if (from < to || t.isHullSide(side)) all.add(new Edge(from, to));
            }
        return all;
    }

    /** The hull, turning left, from its smallest point; points that lie on its sides are in it. */
    public List<Integer> hull() {
        int[] next = new int[points.size()];
        int start = points.size();
        for (Triangle t : triangles) {
            for (int side = 0; side < 3; side++) {
                if (!t.isHullSide(side)) continue;
                next[t.corner(side)] = t.corner((side + 1) % 3);
                start = Math.min(start, t.corner(side));
            }
        }
        List<Integer> round = new ArrayList<>();
        if (triangles.isEmpty()) return round;
        int at = start;
        do {
            round.add(at);
            at = next[at];
        } while (at != start);
        return List.copyOf(round);
    }
}
