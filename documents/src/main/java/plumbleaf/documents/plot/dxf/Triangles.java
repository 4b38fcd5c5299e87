package plumbleaf.documents.plot.dxf;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Point;

/** A filled outline in triangles, by cutting ears; for outlines that do not cross themselves. */
final class Triangles {
    private Triangles() {}

    static List<List<Point>> of(List<Point> outline) {
        List<Point> left = new ArrayList<>(outline);
        if (area(left) < 0) java.util.Collections.reverse(left);
        List<List<Point>> triangles = new ArrayList<>();
        while (left.size() > 3) {
            int ear = ear(left);
            int size = left.size();
            triangles.add(List.of(left.get((ear + size - 1) % size), left.get(ear), left.get((ear + 1) % size)));
            left.remove(ear);
        }
        triangles.add(List.copyOf(left));
        return triangles;
    }

    private static int ear(List<Point> outline) {
        int size = outline.size();
        for (int i = 0; i < size; i++) {
            Point before = outline.get((i + size - 1) % size);
            Point tip = outline.get(i);
            Point after = outline.get((i + 1) % size);
            if (turn(before, tip, after) < 0) continue;
            boolean empty = true;
            for (Point other : outline) {
                boolean corner = other.equals(before) || other.equals(tip) || other.equals(after);
                if (!corner
                        && turn(before, tip, other) >= 0
                        && turn(tip, after, other) >= 0
                        && turn(after, before, other) >= 0) empty = false;
            }
            if (empty) return i;
        }
        return 0;
    }

    private static double turn(Point a, Point b, Point c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }

    private static double area(List<Point> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point from = outline.get(i);
            Point to = outline.get((i + 1) % outline.size());
            twice += from.x() * to.y() - to.x() * from.y();
        }
        return twice / 2;
    }
}
