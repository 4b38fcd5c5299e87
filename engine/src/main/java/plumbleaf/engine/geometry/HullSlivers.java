package plumbleaf.engine.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plumbleaf.engine.quantity.Length;

/**
 * Takes the slivers off the hull of a triangulation: triangles lower than a stated height over their longest side, where that side, or two sides, are the hull's.
 * They come of points measured on one straight line, whose places are rounded to the grid so that one of them lies a hair inside the side between the others; what
 * such a triangle says of heights is noise. Taken off from the outside in, smallest number first, until none is left; a triangle whose loss would leave the rest
 * joined at a corner only stays.
 */
final class HullSlivers {
    private final List<PlanPoint> points;
    private final List<Triangle> triangles;
    private final double thinIn;
    private final boolean[] gone;

    private HullSlivers(List<PlanPoint> points, List<Triangle> triangles, Length thin) {
        this.points = points;
        this.triangles = triangles;
        this.thinIn = thin.inches();
        this.gone = new boolean[triangles.size()];
    }

    static List<Triangle> off(List<PlanPoint> points, List<Triangle> triangles, Length thin) {
        HullSlivers hull = new HullSlivers(points, triangles, thin);
        boolean changed = true;
        boolean any = false;
        while (changed) {
            changed = false;
            for (int i = 0; i < triangles.size(); i++) {
                if (hull.gone[i] || !hull.comesOff(triangles.get(i))) continue;
                hull.gone[i] = true;
                changed = true;
                any = true;
            }
        }
        return any ? hull.rest() : triangles;
    }

    private boolean comesOff(Triangle t) {
        int longest = 0;
        int open = 0;
        for (int side = 0; side < 3; side++) {
            if (length(t, side) > length(t, longest)) longest = side;
            if (isOpen(t, side)) open++;
        }
        if (open == 0 || heightOver(t, longest) >= thinIn) return false;
        if (open > 1) return true;
        return isOpen(t, longest) && !isOnHull(t.corner((longest + 2) % 3));
    }

    private boolean isOpen(Triangle t, int side) {
        return t.isHullSide(side) || gone[t.beyond(side)];
    }

    private boolean isOnHull(int point) {
        for (int i = 0; i < triangles.size(); i++) {
            Triangle t = triangles.get(i);
            for (int side = 0; side < 3 && !gone[i]; side++) {
                boolean ends = t.corner(side) == point || t.corner((side + 1) % 3) == point;
                if (ends && isOpen(t, side)) return true;
            }
        }
        return false;
    }

    private double length(Triangle t, int side) {
        return points.get(t.corner(side))
                .distanceTo(points.get(t.corner((side + 1) % 3)))
                .inches();
    }

    private double heightOver(Triangle t, int side) {
        PlanPoint from = points.get(t.corner(side));
        PlanPoint to = points.get(t.corner((side + 1) % 3));
        PlanPoint top = points.get(t.corner((side + 2) % 3));
        return Math.abs(top.leftOf(from, to)) / length(t, side);
    }

    /** The triangles that stay, numbered afresh. */
    private List<Triangle> rest() {
        int[] number = new int[triangles.size()];
        Arrays.fill(number, Triangle.NONE);
        int next = 0;
        for (int i = 0; i < gone.length; i++) if (!gone[i]) number[i] = next++;
        List<Triangle> rest = new ArrayList<>();
        for (int i = 0; i < gone.length; i++) {
            if (gone[i]) continue;
            Triangle t = triangles.get(i);
            rest.add(new Triangle(
                    t.a(),
                    t.b(),
                    t.c(),
                    renumbered(number, t.beyondAb()),
                    renumbered(number, t.beyondBc()),
                    renumbered(number, t.beyondCa())));
        }
        return List.copyOf(rest);
    }

    private static int renumbered(int[] number, int triangle) {
        return triangle == Triangle.NONE ? Triangle.NONE : number[triangle];
    }
}
