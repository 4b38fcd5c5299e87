package plumbleaf.engine.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.Edge;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.geometry.SpacePoint;
import plumbleaf.engine.geometry.Triangle;
import plumbleaf.engine.geometry.Triangulation;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * The ground near a place as triangles through its shots. Outside their hull the plane of the nearest triangle goes on; at a corner of the hull, where two are as
 * near, that of the first.
 *
 * @param triangles never empty
 * @param heights of its points, in their order
 * @param findings what was assumed to make it
 */
public record Surface(Triangulation triangles, List<Offset> heights, List<Finding> findings) {
    /** Shorter pieces of a walk are rounding: a millionth of an inch. */
    private static final double NOTHING_IN = 1e-6;

    /**
     * Points nearer to each other than this are one place, points nearer to a line than this lie on it, and places no further outside the hull are not outside: finer
     * than any tape, coarser than the rounding of a foot on a slanted line.
     */
    static final Length ONE_PLACE = Length.inches(0.01);

    /**
     * Ground no further outside the shots than this counts as shot and needs no word, as a shot no further off the run counts as on it: over so little a plane
     * carried on is wrong by less than tape and level are. A hinge pin stands beside its line by less. Judgement.
     */
    static final Length AS_GOOD_AS_SHOT = Length.inches(3);

    public Surface {
        triangles = triangles.withoutSlivers(ONE_PLACE);
        heights = List.copyOf(heights);
        findings = List.copyOf(findings);
        if (triangles.triangles().isEmpty())
            throw new IllegalArgumentException("A surface needs three points off one line");
    }

    public SurfaceHeight heightAt(PlanPoint place) {
        Under under = under(place);
        return new SurfaceHeight(plane(under.triangle).heightAt(place), under.beyond);
    }

    /** The plane of the ground at a place. */
    public Plane planeAt(PlanPoint place) {
        return plane(under(place).triangle);
    }

    /** What has to be said where a place is used that lies further outside the shots than {@link #AS_GOOD_AS_SHOT}. */
    public Optional<Finding> extrapolation(String part, PlanPoint place, DisplayUnits display) {
        SurfaceHeight height = heightAt(place);
        return height.beyond().compareTo(AS_GOOD_AS_SHOT) > 0
                ? Optional.of(new GroundFindings(display).beyondShots(part, height.beyond()))
                : Optional.empty();
    }

    /** The straight walk between two places, cut where the ground bends, in order. Both must differ. */
    public List<SurfacePiece> along(PlanPoint from, PlanPoint to) {
        Direction way = Direction.from(from, to);
        double length = from.distanceTo(to).inches();
        TreeSet<Double> cuts = new TreeSet<>();
        cuts.add(0.0);
        cuts.add(length);
        List<HullSide> round = hullSides();
        for (Edge edge : triangles.edges())
            crossing(from, way, length, point(edge.from()), point(edge.to())).ifPresent(cuts::add);
        for (HullSide side : round) {
            PlanPoint a = point(side.from);
            PlanPoint b = point(side.to);
            crossing(from, way, length, a, a.moved(side.out, Length.feet(1000))).ifPresent(cuts::add);
            crossing(from, way, length, b, b.moved(side.out, Length.feet(1000))).ifPresent(cuts::add);
        }
        return pieces(from, way, new ArrayList<>(cuts), round);
    }

    private List<SurfacePiece> pieces(PlanPoint from, Direction way, List<Double> cuts, List<HullSide> round) {
        List<SurfacePiece> pieces = new ArrayList<>();
        int last = Triangle.NONE;
        boolean lastBeyond = false;
        double begin = 0;
        for (int i = 1; i < cuts.size(); i++) {
            double middle = (cuts.get(i - 1) + cuts.get(i)) / 2;
            boolean closing = i == cuts.size() - 1;
            if (cuts.get(i) - cuts.get(i - 1) < NOTHING_IN && !(closing && last == Triangle.NONE)) {
                if (closing) pieces.add(piece(from, way, begin, cuts.get(i), last, lastBeyond));
                continue;
            }
            Under under = under(from.moved(way, new Offset(middle)), round);
            boolean beyond = !under.beyond.isZero();
            if (last != Triangle.NONE && (under.triangle != last || beyond != lastBeyond)) {
                pieces.add(piece(from, way, begin, cuts.get(i - 1), last, lastBeyond));
                begin = cuts.get(i - 1);
            }
            last = under.triangle;
            lastBeyond = beyond;
            if (closing) pieces.add(piece(from, way, begin, cuts.get(i), last, lastBeyond));
        }
        return List.copyOf(pieces);
    }

    private SurfacePiece piece(PlanPoint from, Direction way, double begin, double end, int triangle, boolean beyond) {
        Plane plane = plane(triangle);
        return new SurfacePiece(
                new Length(begin),
                new Length(end),
                plane.heightAt(from.moved(way, new Offset(begin))),
                plane.heightAt(from.moved(way, new Offset(end))),
                beyond);
    }

    /** Flat pieces that cover the disc round a place without a gap: every triangle, and the planes that go on beyond the hull as far as needed. */
    public List<SurfaceFacet> facetsCovering(PlanPoint centre, Length radius) {
        List<SurfaceFacet> facets = new ArrayList<>();
        double far = radius.inches();
        for (int i = 0; i < triangles.triangles().size(); i++) {
            Triangle t = triangles.triangles().get(i);
            facets.add(facet(i, false, List.of(point(t.a()), point(t.b()), point(t.c()))));
            for (int corner = 0; corner < 3; corner++)
                far = Math.max(
                        far,
                        radius.inches()
                                + point(t.corner(corner)).distanceTo(centre).inches());
        }
        List<HullSide> sides = hullSides();
        for (int i = 0; i < sides.size(); i++) {
            HullSide side = sides.get(i);
            HullSide next = sides.get((i + 1) % sides.size());
            PlanPoint a = point(side.from);
            PlanPoint b = point(side.to);
            Offset reach = new Offset(far);
            facets.add(facet(side.triangle, true, List.of(a, a.moved(side.out, reach), b.moved(side.out, reach), b)));
            fan(facets, b, side.out, next.out, Math.min(side.triangle, next.triangle), far);
        }
        return List.copyOf(facets);
    }

    /** The wedge at a corner of the hull, in parts narrow enough that each covers its arc. */
    private void fan(
            List<SurfaceFacet> facets, PlanPoint corner, Direction from, Direction to, int triangle, double far) {
        double turn = from.leftTurnTo(to).radians();
        if (turn <= 0) return;
        int parts = (int) Math.ceil(turn / (Math.PI / 4));
        Offset reach = new Offset(far / StrictMath.cos(turn / parts / 2));
        Direction at = from;
        for (int i = 1; i <= parts; i++) {
            Direction next = i == parts ? to : from.turnedLeft(new Angle(turn * i / parts));
            facets.add(facet(triangle, true, List.of(corner, corner.moved(at, reach), corner.moved(next, reach))));
            at = next;
        }
    }

    private SurfaceFacet facet(int triangle, boolean extrapolated, List<PlanPoint> corners) {
        Plane plane = plane(triangle);
        List<SpacePoint> raised = corners.stream()
                .map(corner -> corner.at(plane.heightAt(corner)))
                .toList();
        return new SurfaceFacet(raised, plane, extrapolated);
    }

    /** The triangle that counts at a place, and how far outside the hull the place is. */
    private record Under(int triangle, Length beyond) {}

    private Under under(PlanPoint place) {
        Optional<Integer> inside = triangles.triangleAt(place);
        return inside.isPresent() ? new Under(inside.get(), Length.ZERO) : outside(place, hullSides());
    }

    private Under under(PlanPoint place, List<HullSide> round) {
        Optional<Integer> inside = triangles.triangleAt(place);
        return inside.isPresent() ? new Under(inside.get(), Length.ZERO) : outside(place, round);
    }

    private Under outside(PlanPoint place, List<HullSide> round) {
        int nearest = Triangle.NONE;
        double least = Double.POSITIVE_INFINITY;
        for (HullSide side : round) {
            double distance = distance(place, point(side.from), point(side.to));
            if (distance < least || (distance == least && side.triangle < nearest)) {
                least = distance;
                nearest = side.triangle;
            }
        }
        return new Under(nearest, least <= ONE_PLACE.inches() ? Length.ZERO : new Length(least));
    }

    private static double distance(PlanPoint place, PlanPoint a, PlanPoint b) {
        double dx = b.xIn() - a.xIn();
        double dy = b.yIn() - a.yIn();
        double share = ((place.xIn() - a.xIn()) * dx + (place.yIn() - a.yIn()) * dy) / (dx * dx + dy * dy);
        if (share <= 0) return place.distanceTo(a).inches();
        if (share >= 1) return place.distanceTo(b).inches();
        return place.distanceTo(a.towards(b, share)).inches();
    }

    /** Distance along the walk at which it crosses a line, where it does. */
    private static Optional<Double> crossing(PlanPoint from, Direction way, double length, PlanPoint a, PlanPoint b) {
        double dx = b.xIn() - a.xIn();
        double dy = b.yIn() - a.yIn();
        double across = way.east() * dy - way.north() * dx;
        if (across == 0) return Optional.empty();
        double ax = a.xIn() - from.xIn();
        double ay = a.yIn() - from.yIn();
        double along = (ax * dy - ay * dx) / across;
        double share = (ax * way.north() - ay * way.east()) / across;
        boolean meets = along > 0 && along < length && share >= -1e-9 && share <= 1 + 1e-9;
        return meets ? Optional.of(along) : Optional.empty();
    }

    /** A side of the hull with the way out of it. */
    private record HullSide(int from, int to, int triangle, Direction out) {}

    private List<HullSide> hullSides() {
        HullSide[] byFrom = new HullSide[triangles.points().size()];
        for (int i = 0; i < triangles.triangles().size(); i++) {
            Triangle t = triangles.triangles().get(i);
            for (int side = 0; side < 3; side++) {
                if (!t.isHullSide(side)) continue;
                int a = t.corner(side);
                int b = t.corner((side + 1) % 3);
                byFrom[a] =
                        new HullSide(a, b, i, Direction.from(point(a), point(b)).right());
            }
        }
        List<HullSide> round = new ArrayList<>();
        for (int corner : triangles.hull()) round.add(byFrom[corner]);
        return round;
    }

    private PlanPoint point(int index) {
        return triangles.points().get(index);
    }

    /** The plane of a triangle; of a sliver inside the surface, which has none of its own, that of the nearest one round it. */
    private Plane plane(int triangle) {
        List<Integer> round = new ArrayList<>(List.of(triangle));
        for (int i = 0; i < round.size(); i++) {
            Triangle t = triangles.triangles().get(round.get(i));
            Optional<Plane> plane = Plane.through(raised(t.a()), raised(t.b()), raised(t.c()));
            if (plane.isPresent()) return plane.get();
            for (int side = 0; side < 3; side++) {
                if (!t.isHullSide(side) && !round.contains(t.beyond(side))) round.add(t.beyond(side));
            }
        }
        throw new IllegalStateException("Every triangle of the ground stands upright");
    }

    private SpacePoint raised(int index) {
        return point(index).at(heights.get(index));
    }
}
