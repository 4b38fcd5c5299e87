package plumbleaf.engine.rule;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;

/** How near a straight piece of fence comes to a building. Source: plane geometry. Check: SiteRulesTest. */
public final class NearBuilding {
    private NearBuilding() {}

    /** The least distance from a piece to the walls between corners in order, and from the last back to the first; zero where they cross. */
    public static Length distance(PlanPoint from, PlanPoint to, List<PlanPoint> corners) {
        List<PlanPoint> round = new ArrayList<>(corners);
        round.add(corners.get(0));
        return toLine(from, to, round);
    }

    /** The least distance from a piece to a line through points in order; zero where they cross. */
    public static Length toLine(PlanPoint from, PlanPoint to, List<PlanPoint> points) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < points.size(); i++) {
            PlanPoint one = points.get(i);
            PlanPoint other = points.get(i + 1);
            if (crosses(from, to, one, other)) return Length.ZERO;
            least = Math.min(least, toPiece(from, one, other));
            least = Math.min(least, toPiece(to, one, other));
            least = Math.min(least, toPiece(one, from, to));
            least = Math.min(least, toPiece(other, from, to));
        }
        return Length.inches(least);
    }

    private static boolean crosses(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) {
        return c.leftOf(a, b) * d.leftOf(a, b) < 0 && a.leftOf(c, d) * b.leftOf(c, d) < 0;
    }

    private static double toPiece(PlanPoint at, PlanPoint from, PlanPoint to) {
        double dx = to.xIn() - from.xIn();
        double dy = to.yIn() - from.yIn();
        double squared = dx * dx + dy * dy;
        double along = squared == 0 ? 0 : ((at.xIn() - from.xIn()) * dx + (at.yIn() - from.yIn()) * dy) / squared;
        double share = Math.max(0, Math.min(1, along));
        double x = from.xIn() + share * dx - at.xIn();
        double y = from.yIn() + share * dy - at.yIn();
        return Math.sqrt(x * x + y * y);
    }
}
