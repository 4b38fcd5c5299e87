package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.DimensionRows;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.catalogue.RollerWay;
import plumbleaf.engine.gate.FrameJoint;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.gate.SlideShape;
import plumbleaf.engine.gate.SlideTravel;
import plumbleaf.engine.gate.Sticks;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Length;

/** The whole leaf of a slide gate from outside, closed, with its tail, its rollers, its three posts and the ground of its way to the end of the open tail. */
public final class SlideElevation {
    private static final double BELOW_GRADE_IN = 10;

    private final SlideSubject subject;
    private final Scale scale;
    private final double low;
    private final double high;
    private final MemberShapes shapes;
    private final List<Mark> marks = new ArrayList<>();

    private SlideElevation(SlideSubject subject, Scale scale) {
        this.subject = subject;
        this.scale = scale;
        List<Place> corners = subject.plan().leaf().outline().corners();
        this.low = corners.get(1).z().inches();
        this.high = corners.get(2).z().inches();
        Leaf leaf = subject.plan().leaf();
        this.shapes = new MemberShapes(leaf, leaf.make().joint());
    }

    /** With sizes, for shop and crew. */
    public static Drawing shop(SlideSubject subject, Scale scale) {
        SlideElevation drawn = new SlideElevation(subject, scale);
        drawn.picture();
        drawn.marksOfMembers();
        drawn.dimensions();
        return Drawing.of("Slide gate " + subject.gate() + ", from outside", scale, drawn.marks);
    }

    /** Without sizes, for a screen. */
    public static Drawing picture(SlideSubject subject, Scale scale) {
        SlideElevation drawn = new SlideElevation(subject, scale);
        drawn.picture();
        return Drawing.of("Slide gate " + subject.gate() + ", from outside", scale, drawn.marks);
    }

    private void picture() {
        face();
        for (Member member : subject.plan().leaf().members()) member(member);
        post(subject.front());
        post(subject.receiver());
        subject.rear().ifPresent(this::post);
        rollers(subject.plan().shape().frontRollers().inches());
        rollers(subject.plan().shape().rearRollers().inches());
        receiver();
        ground();
        words();
    }

    private Point at(double rIn, double zIn) {
        return new Point(subject.x(rIn), zIn);
    }

    /** What is clad, tinted; what fills it is on the cut list. */
    private void face() {
        double nose = subject.plan().shape().nose().inches();
        marks.add(Area.plain(
                List.of(at(0, low), at(nose, low), at(nose, high), at(0, high)),
                Material.GATE_FACE,
                Look.thin(Layer.PICKETS).of(subject.plan().leaf().id())));
    }

    /** A tube as it is cut, with its splices. */
    private void member(Member member) {
        marks.add(Area.edged(
                MemberShapes.seen(shapes.of(member), subject.outside()),
                Material.STEEL_FACE,
                Look.visible(Layer.MEMBERS).of(member.id())));
        double half = member.section().depth().inches() / 2;
        List<Length> pieces = Sticks.pieces(member);
        double along = 0;
        for (int i = 0; i + 1 < pieces.size(); i++) {
            along += pieces.get(i).inches();
            double r = member.from().r().inches() + along;
            double z = member.from().z().inches();
            marks.add(Stroke.line(
                    at(r, z - half),
                    at(r, z + half),
                    Look.visible(Layer.MEMBERS).of(member.id())));
            marks.add(Text.small(at(r, z + half + scale.real(0.1)), "splice")
                    .centred()
                    .with(Look.note().of(member.id())));
        }
    }

    private void post(Post post) {
        double half = post.width().inches() / 2;
        double r = subject.at(post);
        double grade = subject.gradeZ(post);
        Look look = Look.visible(Layer.POSTS).of(post.id());
        marks.add(Area.edged(
                List.of(
                        at(r - half, grade),
                        at(r + half, grade),
                        at(r + half, subject.topZ(post)),
                        at(r - half, subject.topZ(post))),
                Material.STEEL_FACE,
                look));
        for (double edge : List.of(r - half, r + half))
            marks.add(Stroke.line(
                    at(edge, grade),
                    at(edge, grade - BELOW_GRADE_IN),
                    Look.hidden(Layer.POSTS).of(post.id())));
        marks.add(Text.small(at(r, subject.topZ(post) + scale.real(0.1)), post.id())
                .centred()
                .bold()
                .with(Look.note().of(post.id())));
    }

    /** Wheels over and under the tube that runs in them, guide wheels at the other; grooved ones under the low tube and over the high one. */
    private void rollers(double r) {
        double tube = subject.parts().frame().depth().inches();
        double wheel = tube * 0.6;
        RollerWay way = subject.plan().rollers().way();
        Look look = Look.visible(Layer.HARDWARE).of(subject.gate());
        if (way == RollerWay.GROOVED) {
            wheel(r, low - wheel, wheel, look);
            wheel(r, high + wheel, wheel, look);
            return;
        }
        double z = way == RollerWay.TOP ? high - tube : low;
        for (double side : List.of(-1.0, 1.0)) {
            wheel(r + side * 1.3 * wheel, z - wheel, wheel, look);
            wheel(r + side * 1.3 * wheel, z + tube + wheel, wheel, look);
        }
        double guide = way == RollerWay.TOP ? low + tube / 2 : high - tube / 2;
        marks.add(Stroke.box(Box.of(at(r - wheel, guide - tube / 2), at(r + wheel, guide + tube / 2)), look));
    }

    private void wheel(double r, double z, double radius, Look look) {
        marks.add(Arc.circle(at(r, z), radius, look));
    }

    private void receiver() {
        double nose = subject.plan().shape().nose().inches();
        double mouth = subject.plan().kind().spec().mouthUp().inches();
        double tube = subject.parts().frame().depth().inches();
        for (double z : List.of(low, high - tube))
            marks.add(Stroke.through(
                    List.of(
                            at(nose - 2, z - mouth),
                            at(nose + 1, z - mouth),
                            at(nose + 1, z + tube + mouth),
                            at(nose - 2, z + tube + mouth)),
                    Look.visible(Layer.HARDWARE).of(subject.gate())));
    }

    private void ground() {
        List<Point> surface = new ArrayList<>();
        for (SlideTravel.Stretch stretch : subject.plan().travel().ground()) {
            surface.add(at(stretch.from().inches(), stretch.start().inches()));
            surface.add(at(stretch.to().inches(), stretch.end().inches()));
        }
        double beyond = subject.at(subject.receiver()) + 12;
        surface.add(at(beyond, subject.gradeZ(subject.receiver())));
        if (subject.x(1) < 0) java.util.Collections.reverse(surface);
        marks.addAll(GroundLine.along(surface, scale.real(0.16)));
        double open = subject.plan().shape().openEnd().inches();
        marks.add(Stroke.through(
                List.of(
                        at(subject.plan().shape().tailEnd().inches(), low),
                        at(open, low),
                        at(open, high),
                        at(subject.plan().shape().tailEnd().inches(), high)),
                Look.hidden(Layer.SWING).of(subject.gate())));
    }

    private void words() {
        double over = high + scale.real(0.35);
        SlideShape shape = subject.plan().shape();
        marks.add(Text.small(at(shape.opening().inches() / 2, over), "opening, outside towards you")
                .centred()
                .with(Look.note().of(subject.gate())));
        marks.add(Text.small(
                        at((shape.openEnd().inches() + shape.tailEnd().inches()) / 2, (low + high) / 2),
                        "open, its tail reaches here")
                .centred()
                .with(Look.note().of(subject.gate())));
    }

    /** Members in rings; of the joints, which are counted in their order, the first two and the last two. */
    private void marksOfMembers() {
        Leaf leaf = subject.plan().leaf();
        int count = leaf.joints().size();
        List<FrameJoint> ends = new ArrayList<>(leaf.joints().subList(0, Math.min(2, count)));
        if (count > 3) ends.addAll(leaf.joints().subList(count - 2, count));
        marks.addAll(JointTags.of(leaf, ends, subject.outside(), scale, marks));
        marks.addAll(MemberBalloons.of(leaf, subject.outside(), scale, marks));
    }

    private void dimensions() {
        SlideShape shape = subject.plan().shape();
        double foot = lowest() - scale.real(0.4);
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, foot, scale);
        between(rows, foot, shape.tailEnd().inches(), 0, " tail");
        between(rows, foot, 0, shape.opening().inches(), " clear opening");
        between(rows, foot, shape.opening().inches(), shape.nose().inches(), "");
        between(rows, foot, shape.rearRollers().inches(), shape.frontRollers().inches(), " rollers");
        between(rows, foot, shape.tailEnd().inches(), shape.nose().inches(), " leaf");
        between(rows, foot, shape.openEnd().inches(), 0, " run-back to keep clear");
        marks.addAll(rows.marks());
        boolean left = subject.x(1) > 0;
        double side =
                at(subject.at(subject.receiver()) + subject.receiver().width().inches(), 0)
                                .x()
                        + (left ? 1 : -1) * scale.real(0.4);
        DimensionRows up = new DimensionRows(left ? DimensionRows.Side.RIGHT : DimensionRows.Side.LEFT, side, scale);
        up.add(
                at(shape.nose().inches(), low),
                at(shape.nose().inches(), high),
                subject.length(high - low),
                subject.gate());
        double grade = subject.groundZ(shape.opening().inches());
        up.add(
                at(shape.nose().inches(), grade),
                at(shape.nose().inches(), low),
                subject.length(low - grade),
                subject.gate());
        marks.addAll(up.marks());
    }

    private double lowest() {
        double least = Math.min(0, subject.gradeZ(subject.receiver()));
        for (SlideTravel.Stretch stretch : subject.plan().travel().ground())
            least = Math.min(
                    least, Math.min(stretch.start().inches(), stretch.end().inches()));
        return least - BELOW_GRADE_IN;
    }

    private void between(DimensionRows rows, double foot, double from, double to, String words) {
        rows.add(at(from, foot), at(to, foot), subject.length(Math.abs(to - from)) + words, subject.gate());
    }
}
