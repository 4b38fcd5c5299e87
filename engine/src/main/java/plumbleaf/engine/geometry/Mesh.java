package plumbleaf.engine.geometry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Triangles under construction: for each directed side the corner to its left. Points are swept from west to east, fixed edges are forced in by
 * flipping what crosses them, and every other edge is flipped until the circle of no triangle holds a point it can see. Four on one circle: the
 * diagonal from the smallest point. That rule is a Delaunay triangulation of points pressed down by ever smaller amounts, so it has one answer
 * and the flipping ends. Method: C. L. Lawson (1977) for the flips, S. W. Sloan (1993) for forcing an edge.
 */
final class Mesh {
    private static final int NO_CORNER = -1;

    private final long[] x;
    private final long[] y;
    private final TreeMap<Long, Integer> apex = new TreeMap<>();
    private final TreeSet<Edge> fixed = new TreeSet<>();

    Mesh(List<PlanPoint> points) {
        x = points.stream().mapToLong(PlanPoint::eastNanometres).toArray();
        y = points.stream().mapToLong(PlanPoint::northNanometres).toArray();
        sweep();
        restore();
    }

    private static long key(int from, int to) {
        return ((long) from << 32) | to;
    }

    /** The corner left of the walk from one point to the next, or none. */
    int left(int from, int to) {
        return apex.getOrDefault(key(from, to), NO_CORNER);
    }

    private int side(int a, int b, int c) {
        return Predicates.side(x[a], y[a], x[b], y[b], x[c], y[c]);
    }

    private void add(int a, int b, int c) {
        apex.put(key(a, b), c);
        apex.put(key(b, c), a);
        apex.put(key(c, a), b);
    }

    private void remove(int a, int b, int c) {
        apex.remove(key(a, b));
        apex.remove(key(b, c));
        apex.remove(key(c, a));
    }

    private void sweep() {
        int count = x.length;
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < count; i++) order.add(i);
        order.sort(Comparator.<Integer>comparingLong(i -> x[i]).thenComparingLong(i -> y[i]));
        for (int i = 1; i < count; i++) {
            int a = order.get(i - 1);
            int b = order.get(i);
            if (x[a] == x[b] && y[a] == y[b])
                throw new IllegalArgumentException("Points " + a + " and " + b + " are one place");
        }
        int first = 2;
        while (first < count && side(order.get(0), order.get(1), order.get(first)) == 0) first++;
        if (first >= count) return;
        int[] next = new int[count];
        int[] previous = new int[count];
        startHull(order, first, next, previous);
        for (int i = first + 1; i < count; i++) wrap(order.get(i - 1), order.get(i), next, previous);
    }

    private void startHull(List<Integer> order, int first, int[] next, int[] previous) {
        int tip = order.get(first);
        boolean leftTurn = side(order.get(0), order.get(1), tip) > 0;
        List<Integer> round = new ArrayList<>();
        for (int i = 0; i < first; i++) round.add(order.get(leftTurn ? i : first - 1 - i));
        for (int i = 1; i < first; i++) add(round.get(i - 1), round.get(i), tip);
        round.add(tip);
        for (int i = 0; i < round.size(); i++) {
            int here = round.get(i);
            int there = round.get((i + 1) % round.size());
            next[here] = there;
            previous[there] = here;
        }
    }

    /** Joins a point east of the hull to every side of it that faces the point; the last point joined touches one of them. */
    private void wrap(int last, int point, int[] next, int[] previous) {
        int ahead = last;
        while (side(ahead, next[ahead], point) < 0) {
            add(next[ahead], ahead, point);
            ahead = next[ahead];
        }
        int behind = last;
        while (side(previous[behind], behind, point) < 0) {
            add(behind, previous[behind], point);
            behind = previous[behind];
        }
        next[behind] = point;
        previous[point] = behind;
        next[point] = ahead;
        previous[ahead] = point;
    }

    private void restore() {
        Deque<Edge> waiting = new ArrayDeque<>();
        for (long side : apex.keySet()) {
            int from = (int) (side >> 32);
            int to = (int) side;
            if (from < to) waiting.add(new Edge(from, to));
        }
        while (!waiting.isEmpty()) {
            Edge edge = waiting.remove();
            int c = left(edge.from(), edge.to());
            int d = left(edge.to(), edge.from());
            if (c == NO_CORNER || d == NO_CORNER || fixed.contains(edge)) continue;
            if (!shouldFlip(edge.from(), edge.to(), c, d)) continue;
            flip(edge.from(), edge.to(), c, d);
            waiting.add(new Edge(edge.from(), c));
            waiting.add(new Edge(edge.to(), c));
            waiting.add(new Edge(edge.from(), d));
            waiting.add(new Edge(edge.to(), d));
        }
    }

    private boolean shouldFlip(int a, int b, int c, int d) {
        int inside = Predicates.inCircle(x[a], y[a], x[b], y[b], x[c], y[c], x[d], y[d]);
        if (inside != 0) return inside > 0;
        return Math.min(c, d) < Math.min(a, b);
    }

    private void flip(int a, int b, int c, int d) {
        remove(a, b, c);
        remove(b, a, d);
        add(a, d, c);
        add(d, b, c);
    }

    /**
     * Forces an edge in, split at the points it passes through.
     *
     * @return the fixed edge it would have to cross, in which case that part stays away
     */
    Optional<Edge> force(Edge wanted) {
        int from = wanted.from();
        while (from != wanted.to()) {
            int reached = firstOnTheWay(from, wanted.to());
            if (left(from, reached) == NO_CORNER && left(reached, from) == NO_CORNER) {
                List<Edge> crossed = crossed(from, reached);
                for (Edge edge : crossed) if (fixed.contains(edge)) return Optional.of(edge);
                clear(from, reached, new ArrayDeque<>(crossed));
            }
            fixed.add(new Edge(from, reached));
            from = reached;
        }
        return Optional.empty();
    }

    /** The first point that lies exactly on the way, or the end. */
    private int firstOnTheWay(int from, int to) {
        int nearest = to;
        for (int i = 0; i < x.length; i++) {
            if (i != from && i != to && side(from, to, i) == 0 && isBetween(i, from, nearest)) nearest = i;
        }
        return nearest;
    }

    private boolean isBetween(int point, int a, int b) {
        return Math.min(x[a], x[b]) <= x[point]
                && x[point] <= Math.max(x[a], x[b])
                && Math.min(y[a], y[b]) <= y[point]
                && y[point] <= Math.max(y[a], y[b]);
    }

    /** The edges crossed on the straight way between two points with none on it, in order. */
    private List<Edge> crossed(int from, int to) {
        List<Edge> edges = new ArrayList<>();
        int right = NO_CORNER;
        int left = NO_CORNER;
        for (var entry : apex.subMap(key(from, 0), key(from + 1, 0)).entrySet()) {
            int p = (int) (long) entry.getKey();
            int q = entry.getValue();
            if (side(from, to, p) < 0 && side(from, to, q) > 0 && side(p, q, to) < 0) {
                right = p;
                left = q;
            }
        }
        while (true) {
            edges.add(new Edge(right, left));
            int beyond = left(left, right);
            if (beyond == to) return edges;
            if (side(from, to, beyond) < 0) right = beyond;
            else left = beyond;
        }
    }

    private void clear(int from, int to, Deque<Edge> crossing) {
        while (!crossing.isEmpty()) {
            Edge edge = crossing.remove();
            int a = edge.from();
            int b = edge.to();
            int c = left(a, b);
            int d = left(b, a);
            boolean bulges = side(c, d, a) * side(c, d, b) < 0;
            if (!bulges) {
                crossing.add(edge);
                continue;
            }
            flip(a, b, c, d);
            boolean still = c != from && c != to && d != from && d != to && side(from, to, c) * side(from, to, d) < 0;
            if (still) crossing.add(new Edge(c, d));
        }
    }

    /** Flips what the fixed edges allow, after all of them are in. */
    void settle() {
        restore();
    }

    List<Edge> fixedEdges() {
        return List.copyOf(fixed);
    }

    /** Every triangle once, by its corners. A triangle begins at its smallest corner, so its first side is its name. */
    List<Triangle> triangles() {
        TreeMap<Long, Integer> numbers = new TreeMap<>();
        for (var entry : apex.entrySet()) {
            int a = (int) (entry.getKey() >> 32);
            int b = (int) (long) entry.getKey();
            if (a < b && a < entry.getValue()) numbers.put(entry.getKey(), numbers.size());
        }
        List<Triangle> triangles = new ArrayList<>();
        for (long side : numbers.keySet()) {
            int a = (int) (side >> 32);
            int b = (int) side;
            int c = left(a, b);
            triangles.add(new Triangle(a, b, c, beyond(numbers, a, b), beyond(numbers, b, c), beyond(numbers, c, a)));
        }
        return List.copyOf(triangles);
    }

    private int beyond(Map<Long, Integer> numbers, int from, int to) {
        int tip = left(to, from);
        if (tip == NO_CORNER) return Triangle.NONE;
        long name = to < from && to < tip ? key(to, from) : from < tip ? key(from, tip) : key(tip, to);
        return numbers.getOrDefault(name, Triangle.NONE);
    }
}
