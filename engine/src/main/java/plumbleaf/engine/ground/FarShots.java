package plumbleaf.engine.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;

/**
 * Shots that lie far off all others in plan, as when a digit of a northing or an easting was misread: so far off their height is held against nobody. A shot that is
 * on a run is where the run is, and one that was taken far out on purpose has others beside it; neither is named.
 */
final class FarShots {
    /** A slip in a coordinate throws a shot this many times as far off as any other lies, at least. Judgement. */
    private static final double TIMES = 4;

    /** Nearer than this nobody calls it far. Judgement: the longest way between shots that needs no word. */
    private static final Length LEAST = GroundFindings.GAP;

    /** More slips than this are no slips. Judgement. */
    private static final int MOST = 3;

    /** With fewer other shots nothing says what is far. */
    private static final int LEAST_OTHERS = 4;

    private FarShots() {}

    private record Apart(GroundPoint point, double nearestIn) {}

    static List<Finding> of(List<GroundPoint> points, GroundFindings say) {
        List<GroundPoint> eastward = new ArrayList<>(points);
        eastward.sort(Comparator.comparingDouble(point -> point.point().plan().xIn()));
        List<Apart> all = new ArrayList<>();
        for (int i = 0; i < eastward.size(); i++) all.add(new Apart(eastward.get(i), nearestIn(eastward, i)));
        all.sort(Comparator.comparingDouble(Apart::nearestIn).reversed());
        int far = 0;
        for (int k = 1; k <= MOST && k + LEAST_OTHERS <= all.size(); k++)
            if (all.get(k - 1).nearestIn() > TIMES * all.get(k).nearestIn()) far = k;
        List<Finding> findings = new ArrayList<>();
        for (Apart each : all.subList(0, far)) {
            boolean named = each.point().on().isEmpty() && each.nearestIn() > LEAST.inches();
            if (named)
                findings.add(say.farOff(
                        each.point().shot(),
                        Length.inches(each.nearestIn()),
                        Length.inches(all.get(far).nearestIn())));
        }
        return findings;
    }

    /** Looks west and east of it, and no farther than the nearest found so far. */
    private static double nearestIn(List<GroundPoint> eastward, int here) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int step : new int[] {-1, 1}) {
            for (int i = here + step; i >= 0 && i < eastward.size(); i += step) {
                PlanPoint place = eastward.get(here).point().plan();
                PlanPoint other = eastward.get(i).point().plan();
                if (Math.abs(other.xIn() - place.xIn()) > nearest) break;
                nearest = Math.min(nearest, place.distanceTo(other).inches());
            }
        }
        return nearest;
    }
}
