package plumbleaf.engine.rule;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import plumbleaf.engine.geometry.PlanPoint;

/**
 * Whether a fence goes from one side of a line to the other: across a piece of it, at one of its corners or at one of the fence's own, at once or after it has run along it for a while. To come
 * to the line and go back, to end on it, or to go round its end is not to go over. Source: plane geometry. Check: SiteRulesTest.
 */
public final class OverLine {
    /** Nearer than this a fence is on the line. A measure for rounding, not for tape. */
    private static final double ON_IN = 1e-6;

    /** The side is asked this far from where the two meet, or at half of what is there. */
    private static final double BESIDE_IN = 0.01;

    private final List<PlanPoint> line;

    /** The side on which the fence last left off being clear of the line: + left, - right, 0 where that is not known. */
    private int came;

    private OverLine(List<PlanPoint> line) {
        this.line = line;
    }

    /** Both through points in order. */
    public static boolean goes(List<PlanPoint> fence, List<PlanPoint> line) {
        OverLine over = new OverLine(line);
        for (int i = 0; i + 1 < fence.size(); i++) if (over.leg(fence.get(i), fence.get(i + 1))) return true;
        return false;
    }

    /** Stretch by stretch between the places where it meets the line: each is clear of it, or lies along it and changes nothing. */
    private boolean leg(PlanPoint from, PlanPoint to) {
        double length = from.distanceTo(to).inches();
        if (length <= ON_IN) return false;
        double last = 0;
        boolean met = isOn(from);
        for (double next : meetings(from, to, length)) {
            if (next - last > 2 * ON_IN && !isOn(from.towards(to, (last + next) / 2 / length))) {
                double beside = Math.min(BESIDE_IN, (next - last) / 2);
                int goes = met ? side(from.towards(to, (last + beside) / length)) : 0;
                if (came * goes < 0) return true;
                came = isOn(from.towards(to, next / length)) ? side(from.towards(to, (next - beside) / length)) : 0;
            }
            last = next;
            met = true;
        }
        return false;
    }

    /** In inches from the leg's start, its end among them. */
    private SortedSet<Double> meetings(PlanPoint from, PlanPoint to, double length) {
        SortedSet<Double> meetings = new TreeSet<>();
        meetings.add(length);
        for (int i = 0; i < line.size(); i++) {
            PlanPoint one = line.get(i);
            double along = dot(from, to, from, one) / length;
            if (along > 0
                    && along < length
                    && one.distanceTo(from.towards(to, along / length)).inches() <= ON_IN) meetings.add(along);
            if (i + 1 == line.size()) break;
            double here = from.leftOf(one, line.get(i + 1));
            double there = to.leftOf(one, line.get(i + 1));
            double share = here / (here - there);
            if (here * there < 0 && isOn(from.towards(to, share))) meetings.add(share * length);
        }
        return meetings;
    }

    private boolean isOn(PlanPoint at) {
        return NearBuilding.toLine(at, at, line).inches() <= ON_IN;
    }

    /** By the piece that is nearest; at a corner of the line by the two that meet there; beyond its ends it has no sides. */
    private int side(PlanPoint at) {
        double least = Double.POSITIVE_INFINITY;
        int side = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            PlanPoint one = line.get(i);
            PlanPoint other = line.get(i + 1);
            double away = NearBuilding.toLine(at, at, List.of(one, other)).inches();
            if (away >= least) continue;
            least = away;
            double piece = one.distanceTo(other).inches();
            double along = piece == 0 ? 0 : dot(one, other, one, at) / piece;
            if (along > 0 && along < piece) side = (int) Math.signum(at.leftOf(one, other));
            else side = atCorner(along <= 0 ? i : i + 1, at);
        }
        return side;
    }

    private int atCorner(int corner, PlanPoint at) {
        if (corner == 0 || corner + 1 == line.size()) return 0;
        PlanPoint here = line.get(corner);
        PlanPoint before = line.get(corner - 1);
        PlanPoint after = line.get(corner + 1);
        double in = before.distanceTo(here).inches();
        double out = here.distanceTo(after).inches();
        if (in == 0 || out == 0) return 0;
        return (int) Math.signum(at.leftOf(before, here) / in + at.leftOf(here, after) / out);
    }

    private static double dot(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) {
        return (b.xIn() - a.xIn()) * (d.xIn() - c.xIn()) + (b.yIn() - a.yIn()) * (d.yIn() - c.yIn());
    }
}
