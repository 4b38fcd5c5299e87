package plumbleaf.engine.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.Edge;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.SpacePoint;
import plumbleaf.engine.geometry.Triangulation;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * Makes the surface round a pin axis: the shots within reach, then the run's profile and the break lines as edges, cut where they leave the circle. The points
 * keep the order of the shots' ids, so the diagonal of four on a circle comes from the smallest id; cut ends come after all shots.
 */
final class SurfaceMaking {
    private final Ground ground;
    private final PlanPoint pin;
    private final Length reach;
    private final List<PlanPoint> points = new ArrayList<>();
    private final List<Offset> heights = new ArrayList<>();
    private final List<Edge> edges = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final GroundFindings say;
    private final List<Finding> findings = new ArrayList<>();

    SurfaceMaking(Ground ground, PlanPoint pin, Length reach) {
        this.ground = ground;
        this.pin = pin;
        this.reach = reach;
        this.say = new GroundFindings(ground.display());
    }

    Surface around(RunLine run, Slope crossSlope) {
        List<SpacePoint> profile = ground.lineOf(run.id());
        List<Integer> all = new ArrayList<>();
        for (int i = 1; i < profile.size(); i++) all.add(i);
        return around(ground.points(), profile, all, run, crossSlope);
    }

    /**
     * @param shots those within reach, and any others, in the order of their ids
     * @param pieces numbers of the pieces of the profile within reach, and of any others: piece {@code i} ends at its point {@code i}
     */
    Surface around(
            List<GroundPoint> shots,
            List<SpacePoint> profile,
            Iterable<Integer> pieces,
            RunLine run,
            Slope crossSlope) {
        for (GroundPoint point : shots) {
            if (point.point().plan().distanceTo(pin).compareTo(reach) <= 0) add(point.shot(), point.point());
        }
        for (int i : pieces) fix(profile.get(i - 1), profile.get(i));
        for (BreakEdge line : ground.breaks()) fix(line.from(), line.to());
        Triangulation triangles = Triangulation.of(points, throughPoints()).withoutSlivers(Surface.ONE_PLACE);
        if (triangles.triangles().isEmpty()) return ruled(run, crossSlope);
        for (Edge refused : triangles.refused())
            findings.add(say.crossingLines(names.get(refused.from()), names.get(refused.to())));
        return new Surface(triangles, heights, findings);
    }

    private int add(String name, SpacePoint point) {
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).distanceTo(point.plan()).compareTo(Surface.ONE_PLACE) < 0) return i;
        }
        points.add(point.plan());
        heights.add(point.elevation());
        names.add(name);
        return points.size() - 1;
    }

    /** Makes the part of a line inside the circle an edge. */
    private void fix(SpacePoint from, SpacePoint to) {
        if (from.plan().isSamePlace(to.plan())) return;
        double dx = to.plan().xIn() - from.plan().xIn();
        double dy = to.plan().yIn() - from.plan().yIn();
        double fx = from.plan().xIn() - pin.xIn();
        double fy = from.plan().yIn() - pin.yIn();
        double a = dx * dx + dy * dy;
        double b = fx * dx + fy * dy;
        double c = fx * fx + fy * fy - reach.inches() * reach.inches();
        double root = b * b - a * c;
        if (root <= 0) return;
        double first = Math.max(0, (-b - Math.sqrt(root)) / a);
        double last = Math.min(1, (-b + Math.sqrt(root)) / a);
        if (first >= last) return;
        int start = add("the edge of the surface", between(from, to, first));
        int end = add("the edge of the surface", between(from, to, last));
        if (start != end) edges.add(new Edge(start, end));
    }

    /** The edges, cut at every point that lies on them, so that no triangle is left between an edge and a point of it. */
    private List<Edge> throughPoints() {
        List<Edge> cut = new ArrayList<>();
        for (Edge edge : edges) {
            PlanPoint from = points.get(edge.from());
            PlanPoint to = points.get(edge.to());
            double lengthIn = from.distanceTo(to).inches();
            TreeMap<Double, Integer> on = new TreeMap<>();
            for (int i = 0; i < points.size(); i++) {
                double alongIn = ((points.get(i).xIn() - from.xIn()) * (to.xIn() - from.xIn())
                                + (points.get(i).yIn() - from.yIn()) * (to.yIn() - from.yIn()))
                        / lengthIn;
                if (i == edge.from() || i == edge.to() || alongIn <= 0 || alongIn >= lengthIn) continue;
                PlanPoint foot = from.towards(to, alongIn / lengthIn);
                if (points.get(i).distanceTo(foot).compareTo(Surface.ONE_PLACE) < 0) on.put(alongIn, i);
            }
            int last = edge.from();
            for (int point : on.values()) {
                cut.add(new Edge(last, point));
                last = point;
            }
            cut.add(new Edge(last, edge.to()));
        }
        return cut;
    }

    private static SpacePoint between(SpacePoint from, SpacePoint to, double share) {
        if (share == 0) return from;
        if (share == 1) return to;
        return from.plan().towards(to.plan(), share).at(new Offset(from.zIn() + (to.zIn() - from.zIn()) * share));
    }

    /** Where no shot lies beside the line: the run's own ground, tilted across by the stated cross slope. */
    private Surface ruled(RunLine run, Slope crossSlope) {
        Profile profile = ground.profile(run.id());
        Offset station = run.line().footOf(pin).station().asOffset();
        Direction along = run.line().directionAt(station);
        Direction inside = run.insideIsLeft() ? along.left() : along.right();
        Offset wide = reach.asOffset();
        List<Offset> stations = new ArrayList<>();
        for (ProfilePoint point : profile.between(station.minus(wide), station.plus(wide)))
            stations.add(point.station());
        PlanPoint foot = run.line().pointAt(station);
        List<PlanPoint> places = new ArrayList<>();
        List<Offset> ground = new ArrayList<>();
        List<Edge> ribs = new ArrayList<>();
        for (Offset at : stations) {
            PlanPoint onLine = foot.moved(along, at.minus(station));
            Offset height = profile.elevationAt(at);
            ribs.add(new Edge(places.size(), places.size() + 1));
            places.add(onLine.moved(inside, wide.negated()));
            ground.add(height.minus(wide.times(crossSlope.ratio())));
            places.add(onLine.moved(inside, wide));
            ground.add(height.plus(wide.times(crossSlope.ratio())));
        }
        findings.add(say.crossSlopeAssumed(run.id(), crossSlope));
        return new Surface(Triangulation.of(places, ribs), ground, findings);
    }
}
