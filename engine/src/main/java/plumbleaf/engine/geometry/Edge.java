package plumbleaf.engine.geometry;

/** A line between two points of a triangulation, by their places in its list; the smaller first. */
public record Edge(int from, int to) implements Comparable<Edge> {
    public Edge {
        if (from == to || from < 0 || to < 0) throw new IllegalArgumentException("An edge joins two different points");
        if (from > to) {
            int swap = from;
            from = to;
            to = swap;
        }
    }

    @Override
    public int compareTo(Edge other) {
        return from != other.from ? Integer.compare(from, other.from) : Integer.compare(to, other.to);
    }
}
