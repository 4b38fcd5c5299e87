package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Point;

/** Cuts an outline by straight lines; what is to the left of each line stays. */
final class Clip {
    private Clip() {}

    /** The part of an outline within a convex one that runs anticlockwise; empty when nothing is left. */
    static List<Point> within(List<Point> outline, List<Point> convex) {
        List<Point> left = outline;
        for (int i = 0; i < convex.size(); i++) left = leftOf(left, convex.get(i), convex.get((i + 1) % convex.size()));
        return left;
    }

    static List<Point> leftOf(List<Point> outline, Point from, Point to) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Point here = outline.get(i);
            Point next = outline.get((i + 1) % outline.size());
            double hereOff = off(from, to, here);
            double nextOff = off(from, to, next);
            if (hereOff >= 0) kept.add(here);
            if ((hereOff > 0 && nextOff < 0) || (hereOff < 0 && nextOff > 0))
                kept.add(here.shareOf(hereOff / (hereOff - nextOff), next));
        }
        return kept;
    }

    private static double off(Point from, Point to, Point place) {
        return (to.x() - from.x()) * (place.y() - from.y()) - (to.y() - from.y()) * (place.x() - from.x());
    }

    /** Where two lines, each through two points, cross; the lines must not be parallel. */
    static Point crossing(Point a, Point b, Point c, Point d) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double ex = d.x() - c.x();
        double ey = d.y() - c.y();
        double along = ((c.x() - a.x()) * ey - (c.y() - a.y()) * ex) / (dx * ey - dy * ex);
        return new Point(a.x() + along * dx, a.y() + along * dy);
    }
}
