package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.drawing.WeldMark;
import plumbleaf.engine.design.FrameWelds;
import plumbleaf.engine.gate.FrameJoint;
import plumbleaf.engine.gate.Hole;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Weld;
import plumbleaf.engine.gate.WeldKind;
import plumbleaf.engine.quantity.DisplayUnits;

/** One joint of a leaf's frame from close by, seen from outside, with every weld it takes. Joints that are made alike share one detail. */
public final class JointDetail {
    /** What of each member is shown, in widths of the tube. */
    private static final double SHOWN_WIDTHS = 2.1;

    private final Leaf leaf;
    private final Outside outside;
    private final DisplayUnits units;
    private final FrameJoint joint;
    private final Scale scale;
    private final List<Mark> marks = new ArrayList<>();

    private JointDetail(Leaf leaf, Outside outside, DisplayUnits units, FrameJoint joint, Scale scale) {
        this.leaf = leaf;
        this.outside = outside;
        this.units = units;
        this.joint = joint;
        this.scale = scale;
    }

    /** Joints made alike, the first of them drawn. */
    public record Alike(FrameJoint joint, List<String> joints, String words) {}

    /** A joint of each make, in the order of the leaf's. */
    public static List<Alike> kinds(Leaf leaf) {
        Map<String, List<FrameJoint>> kinds = new LinkedHashMap<>();
        for (FrameJoint joint : leaf.joints()) {
            TreeSet<String> made = new TreeSet<>();
            for (Weld weld : leaf.welds())
                if (weld.joint().equals(joint.id())) made.add(weld.kind().words() + " " + weld.where());
            if (made.isEmpty()) continue;
            kinds.computeIfAbsent(String.join("|", made), key -> new ArrayList<>())
                    .add(joint);
        }
        List<Alike> alike = new ArrayList<>();
        for (List<FrameJoint> same : kinds.values())
            alike.add(
                    new Alike(same.get(0), same.stream().map(FrameJoint::id).toList(), words(leaf, same.get(0), same)));
        return List.copyOf(alike);
    }

    /** Its own mark, what meets there, and the marks of those that are made alike. */
    private static String words(Leaf leaf, FrameJoint joint, List<FrameJoint> same) {
        List<String> names = joint.members().stream()
                .map(leaf::member)
                .flatMap(Optional::stream)
                .map(member -> member.role().words())
                .toList();
        String others = JointNames.of(
                leaf.id(), same.stream().skip(1).map(FrameJoint::id).toList());
        return JointNames.of(leaf.id(), joint.id()) + ": " + String.join(", ", names)
                + (others.isEmpty() ? "" : "; so is " + others);
    }

    public static Drawing of(GateSubject gate, Alike alike, Scale scale) {
        return new JointDetail(gate.leaf(), gate.outside(), gate.units(), alike.joint(), scale).drawn(alike.words());
    }

    public static Drawing of(SlideSubject gate, Alike alike, Scale scale) {
        return new JointDetail(gate.plan().leaf(), gate.outside(), gate.display(), alike.joint(), scale)
                .drawn(alike.words());
    }

    private Drawing drawn(String words) {
        Point at = outside.at(joint.at());
        double half = leaf.make().tube().depth().inches() * SHOWN_WIDTHS;
        Box crop = Box.of(at, at).grown(half);
        MemberShapes shapes = new MemberShapes(leaf, leaf.make().joint());
        for (String id : joint.members()) leaf.member(id).ifPresent(member -> member(member, shapes, crop));
        welds(crop);
        return Drawing.of("Leaf " + leaf.id() + ", " + words, scale, marks);
    }

    private void member(Member member, MemberShapes shapes, Box crop) {
        List<Point> seen = Clip.within(MemberShapes.seen(fitted(member, shapes), outside), crop.corners());
        if (seen.size() < 3) return;
        Look look = Look.visible(Layer.MEMBERS).of(member.id());
        marks.add(Area.plain(seen, Material.STEEL_FACE, look));
        for (int i = 0; i < seen.size(); i++) {
            Point one = seen.get(i);
            Point other = seen.get((i + 1) % seen.size());
            marks.add(Stroke.line(one, other, isCut(one, other, crop) ? look.as(LineKind.PHANTOM) : look));
        }
        for (Hole hole : member.holes()) hole(member, hole, crop);
        marks.add(Text.small(
                        numberPlace(Box.around(seen)),
                        member.id().substring(member.id().lastIndexOf('.') + 2))
                .bold()
                .centred()
                .clearing()
                .with(Look.note().of(member.id())));
    }

    /** A brace ends at the face of a rail that it meets here, where the room between the stiles alone would let it run on. */
    private List<Point> fitted(Member member, MemberShapes shapes) {
        List<Point> shape = shapes.of(member);
        if (member.role() != MemberRole.BRACE) return shape;
        Point middle = Box.around(shape).centre();
        for (String id : joint.members()) {
            Optional<Member> rail = leaf.member(id).filter(other -> other.role() == MemberRole.MID_RAIL);
            if (rail.isEmpty()) continue;
            Point from = new Point(
                    rail.get().from().r().inches(), rail.get().from().z().inches());
            Point to =
                    new Point(rail.get().to().r().inches(), rail.get().to().z().inches());
            double along = from.direction(to);
            double half = rail.get().section().depth().inches() / 2;
            double at = from.y() + (middle.x() - from.x()) * StrictMath.tan(along);
            boolean below = middle.y() < at;
            double square = along + (below ? -1 : 1) * Math.PI / 2;
            Point one = from.towards(square, half);
            Point other = to.towards(square, half);
            shape = below ? Clip.leftOf(shape, other, one) : Clip.leftOf(shape, one, other);
        }
        return shape;
    }

    /** Away from the joint, where the arrows of the welds end. */
    private Point numberPlace(Box box) {
        Point at = outside.at(joint.at());
        Point middle = box.centre();
        double depth = leaf.make().tube().depth().inches();
        if (middle.distance(at) > depth * 0.9) return middle;
        return box.height() > box.width()
                ? new Point(middle.x(), far(at.y(), box.minY(), box.maxY()))
                : new Point(far(at.x(), box.minX(), box.maxX()), middle.y());
    }

    /** A little in from the end that lies farther away. */
    private static double far(double from, double low, double high) {
        double in = (high - low) * 0.2;
        return Math.abs(low - from) > Math.abs(high - from) ? low + in : high - in;
    }

    /** Whether an edge is only where the detail ends. */
    private static boolean isCut(Point one, Point other, Box crop) {
        return (near(one.x(), crop.minX()) && near(other.x(), crop.minX()))
                || (near(one.x(), crop.maxX()) && near(other.x(), crop.maxX()))
                || (near(one.y(), crop.minY()) && near(other.y(), crop.minY()))
                || (near(one.y(), crop.maxY()) && near(other.y(), crop.maxY()));
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) < 1e-6;
    }

    private void hole(Member member, Hole hole, Box crop) {
        Point from = outside.at(member.from());
        Point to = outside.at(member.to());
        double spare = (member.longPoint().inches() - from.distance(to)) / 2;
        Point at = from.towards(from.direction(to), hole.fromDatum().inches() - spare);
        if (!crop.contains(Box.of(at, at))) return;
        hole.diameter()
                .value()
                .ifPresent(size -> marks.add(Arc.circle(
                        at, size.inches() / 2, Look.visible(Layer.HARDWARE).of(member.id()))));
    }

    /**
     * The marks stand over one another above the joint, each with its arrow on its own seam; size at the left, length of one weld at the right, ground
     * flush in the tail.
     */
    private void welds(Box crop) {
        List<Weld> here = leaf.welds().stream()
                .filter(weld -> weld.joint().equals(joint.id()))
                .toList();
        double right = here.stream()
                .mapToDouble(weld -> tip(weld).x())
                .max()
                .orElse(crop.centre().x());
        double step = 0;
        for (Weld weld : here) {
            marks.add(new WeldMark(
                    tip(weld),
                    new Point(right + scale.real(0.2), crop.maxY() + scale.real(0.3 + step)),
                    true,
                    switch (weld.kind()) {
                        case GROOVE -> WeldMark.Kind.SQUARE;
                        case FILLET -> WeldMark.Kind.FILLET;
                        case FLARE_BEVEL -> WeldMark.Kind.FLARE_BEVEL;
                    },
                    weld.runs() > 1 ? WeldMark.Sides.BOTH : WeldMark.Sides.ARROW,
                    weld.kind() == WeldKind.FILLET
                            ? Sizes.inches(
                                    units, FrameWelds.leg(leaf.make().tube()).inches())
                            : "",
                    Sizes.inches(units, weld.length().inches() / weld.runs()),
                    false,
                    false,
                    weld.flush() ? "grind flush" : "",
                    Look.note()));
            step += 0.38;
        }
    }

    /** Where the arrow of a weld ends: the middle of its seam, or for a fillet the end of it, in a corner the inner one. */
    private Point tip(Weld weld) {
        Point at = outside.at(joint.at());
        Optional<Member> joined = joint.members().stream()
                .skip(1)
                .map(leaf::member)
                .flatMap(Optional::stream)
                .filter(member ->
                        (member.role() == MemberRole.BRACE) == weld.where().startsWith("brace"))
                .findFirst();
        if (joined.isEmpty()) return at;
        MemberShapes shapes = new MemberShapes(leaf, leaf.make().joint());
        List<Point> near = new ArrayList<>(MemberShapes.seen(fitted(joined.get(), shapes), outside));
        near.sort(Comparator.comparingDouble(corner -> corner.distance(at)));
        Point one = near.get(0);
        Point other = near.get(1);
        if (weld.kind() != WeldKind.FILLET) return one.middle(other);
        if (weld.runs() > 1) return one.y() > other.y() ? one : other;
        Point middle = outside.at(leaf.weight().centreOfGravity());
        return one.distance(middle) < other.distance(middle) ? one : other;
    }
}
