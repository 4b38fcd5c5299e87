package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumbleaf.documents.drawing.Point;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberEnd;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.job.Joint;

/**
 * The outlines of a leaf's members in its plane, x along r. Stiles and rails follow the leaf's outline; braces fill the room between
 * what they meet.
 */
final class MemberShapes {
    private final Leaf leaf;
    private final Joint joint;
    private final List<Point> outer;
    private final List<Point> inner;
    private final double depth;

    MemberShapes(Leaf leaf, Joint joint) {
        this.leaf = leaf;
        this.joint = joint;
        this.depth = leaf.members().get(0).section().depth().inches();
        this.outer = leaf.outline().corners().stream()
                .map(place -> new Point(place.r().inches(), place.z().inches()))
                .toList();
        this.inner = inner();
    }

    /** Lower hinge, lower latch, upper latch, upper hinge: inside the frame. */
    private List<Point> inner() {
        double hinge = outer.get(0).x() + depth;
        double latch = outer.get(1).x() - depth;
        List<Point> bottom = shifted(outer.get(0), outer.get(1), depth);
        List<Point> top = shifted(outer.get(2), outer.get(3), depth);
        return List.of(onPlumb(bottom, hinge), onPlumb(bottom, latch), onPlumb(top, latch), onPlumb(top, hinge));
    }

    private static List<Point> shifted(Point from, Point to, double toLeft) {
        double square = from.direction(to) + Math.PI / 2;
        return List.of(from.towards(square, toLeft), to.towards(square, toLeft));
    }

    private static Point onPlumb(List<Point> line, double x) {
        return Clip.crossing(line.get(0), line.get(1), new Point(x, 0), new Point(x, 1));
    }

    /** Inner faces of the frame: what a panel or a brace has room in. */
    List<Point> opening() {
        return inner;
    }

    List<Point> of(Member member) {
        boolean mitred = joint == Joint.MITERED;
        if (joint.railsRunThrough() && isEdge(member)) return squareEnded(member);
        return switch (member.role()) {
            case ROD -> rod(member);
            case HINGE_STILE -> mitred ? List.of(outer.get(0), inner.get(0), inner.get(3), outer.get(3)) : stile(0, 3);
            case LATCH_STILE -> mitred ? List.of(inner.get(1), outer.get(1), outer.get(2), inner.get(2)) : stile(1, 2);
            case BOTTOM_RAIL ->
                mitred
                        ? List.of(outer.get(0), outer.get(1), inner.get(1), inner.get(0))
                        : rail(outer.get(0), outer.get(1), 1);
            case TOP_RAIL ->
                mitred
                        ? List.of(inner.get(3), inner.get(2), outer.get(2), outer.get(3))
                        : rail(outer.get(3), outer.get(2), -1);
            case MID_RAIL, BRACE, TAIL_UPRIGHT, NOSE_UPRIGHT, UPRIGHT -> Clip.within(strip(member), room(member));
        };
    }

    private static boolean isEdge(Member member) {
        return member.role() != MemberRole.MID_RAIL
                && member.role() != MemberRole.BRACE
                && member.role() != MemberRole.ROD;
    }

    /** With rails that run through: rails from edge to edge, stiles from face to face. */
    private List<Point> squareEnded(Member member) {
        return switch (member.role()) {
            case BOTTOM_RAIL -> {
                List<Point> inside = shifted(outer.get(0), outer.get(1), depth);
                yield List.of(
                        outer.get(0),
                        outer.get(1),
                        onPlumb(inside, outer.get(1).x()),
                        onPlumb(inside, outer.get(0).x()));
            }
            case TOP_RAIL -> {
                List<Point> inside = shifted(outer.get(2), outer.get(3), depth);
                yield List.of(
                        onPlumb(inside, outer.get(3).x()),
                        onPlumb(inside, outer.get(2).x()),
                        outer.get(2),
                        outer.get(3));
            }
            case HINGE_STILE -> between(outer.get(0).x(), inner.get(0).x());
            case TAIL_UPRIGHT, NOSE_UPRIGHT, UPRIGHT ->
                between(
                        member.from().r().inches() - depth / 2,
                        member.from().r().inches() + depth / 2);
            default -> between(inner.get(1).x(), outer.get(1).x());
        };
    }

    private List<Point> between(double fromX, double toX) {
        List<Point> low = shifted(outer.get(0), outer.get(1), depth);
        List<Point> high = shifted(outer.get(2), outer.get(3), depth);
        return List.of(onPlumb(low, fromX), onPlumb(low, toX), onPlumb(high, toX), onPlumb(high, fromX));
    }

    /** From eye to eye, on top of any rail between. */
    private static List<Point> rod(Member member) {
        Point from = new Point(member.from().r().inches(), member.from().z().inches());
        Point to = new Point(member.to().r().inches(), member.to().z().inches());
        double along = from.direction(to);
        double half = member.section().depth().inches() / 2;
        return List.of(
                from.towards(along - Math.PI / 2, half),
                to.towards(along - Math.PI / 2, half),
                to.towards(along + Math.PI / 2, half),
                from.towards(along + Math.PI / 2, half));
    }

    private List<Point> stile(int low, int high) {
        double face = low == 0 ? outer.get(0).x() + depth : outer.get(1).x() - depth;
        Point foot = onPlumb(List.of(outer.get(0), outer.get(1)), face);
        Point head = onPlumb(List.of(outer.get(3), outer.get(2)), face);
        return low == 0
                ? List.of(outer.get(low), foot, head, outer.get(high))
                : List.of(foot, outer.get(low), outer.get(high), head);
    }

    private List<Point> rail(Point from, Point to, double inward) {
        double hinge = inner.get(0).x();
        double latch = inner.get(1).x();
        List<Point> edge = List.of(from, to);
        List<Point> inside = inward > 0 ? shifted(from, to, depth) : shifted(to, from, depth);
        return List.of(onPlumb(edge, hinge), onPlumb(edge, latch), onPlumb(inside, latch), onPlumb(inside, hinge));
    }

    /** The member's own width, longer than it can be. */
    private List<Point> strip(Member member) {
        Point from = new Point(member.from().r().inches(), member.from().z().inches());
        Point to = new Point(member.to().r().inches(), member.to().z().inches());
        double along = from.direction(to);
        double half = member.section().depth().inches() / 2;
        Point start = from.towards(along + Math.PI, spare(member, member.firstEnd()));
        Point end = to.towards(along, spare(member, member.lastEnd()));
        return List.of(
                start.towards(along - Math.PI / 2, half),
                end.towards(along - Math.PI / 2, half),
                end.towards(along + Math.PI / 2, half),
                start.towards(along + Math.PI / 2, half));
    }

    /** Far beyond what it is cut to; where one half of a cross butts against the brace that runs through, as far as that brace covers. */
    private double spare(Member member, MemberEnd end) {
        boolean halved = member.role() == MemberRole.BRACE
                && end.cuts().size() == 1
                && leaf.member(end.cuts().get(0).against())
                        .filter(other -> other.role() == MemberRole.BRACE)
                        .isPresent();
        return halved ? depth / 2 : 4 * depth;
    }

    /** Rails stop at the stiles; braces at the stiles and at the rails whose corners they run to. */
    private List<Point> room(Member member) {
        if (member.role() == MemberRole.MID_RAIL) {
            double low = Math.min(outer.get(0).y(), outer.get(1).y());
            double high = Math.max(outer.get(2).y(), outer.get(3).y());
            return List.of(
                    new Point(inner.get(0).x(), low), new Point(inner.get(1).x(), low),
                    new Point(inner.get(1).x(), high), new Point(inner.get(0).x(), high));
        }
        List<Double> uprights = uprights(member);
        if (uprights.size() < 2) return inner;
        List<Point> low = List.of(inner.get(0), inner.get(1));
        List<Point> high = List.of(inner.get(3), inner.get(2));
        double from = uprights.get(0) + depth / 2;
        double to = uprights.get(uprights.size() - 1) - depth / 2;
        return List.of(onPlumb(low, from), onPlumb(low, to), onPlumb(high, to), onPlumb(high, from));
    }

    /** Where the uprights stand that both ends of a slide's brace are cut against, in order. */
    private List<Double> uprights(Member member) {
        return Stream.of(member.firstEnd(), member.lastEnd())
                .flatMap(end -> end.cuts().stream())
                .map(cut -> leaf.member(cut.against()))
                .flatMap(Optional::stream)
                .filter(other -> switch (other.role()) {
                    case TAIL_UPRIGHT, NOSE_UPRIGHT, UPRIGHT -> true;
                    default -> false;
                })
                .map(other -> other.from().r().inches())
                .sorted()
                .toList();
    }

    /** Mirrors an outline for a viewer and keeps it anticlockwise. */
    static List<Point> seen(List<Point> outline, Outside outside) {
        List<Point> seen = new ArrayList<>();
        for (Point point : outline) seen.add(outside.at(point.x(), point.y()));
        if (outside.rightward() < 0) java.util.Collections.reverse(seen);
        return seen;
    }
}
