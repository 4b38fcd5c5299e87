package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.DimensionRows;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.gate.Crest;
import plumbleaf.engine.gate.Fitting;
import plumbleaf.engine.gate.HingePin;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafTrim;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.gate.Picket;

/**
 * A leaf between its posts, from outside. As a shop drawing it shows the bare frame with ordinates from the lower hinge corner of the
 * outline; as a picture it shows the finished gate.
 */
public final class GateElevation {
    private static final double POST_BELOW_GRADE_IN = 9;
    private static final double GROUND_BEYOND_IN = 9;

    private final GateSubject gate;
    private final Leaf leaf;
    private final Outside outside;
    private final MemberShapes shapes;
    private final Scale scale;
    private final List<Mark> marks = new ArrayList<>();

    private GateElevation(GateSubject gate, Scale scale) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.outside = gate.outside();
        this.shapes = new MemberShapes(leaf, gate.parts().joint());
        this.scale = scale;
    }

    /** The steel frame with all its dimensions, for the saw, the jig and the welder. */
    public static Drawing shop(GateSubject gate, Scale scale) {
        return new GateElevation(gate, scale).shop();
    }

    /** The frame alone with member marks: for a screen, where the numbers stand beside it. */
    public static Drawing frame(GateSubject gate, Scale scale) {
        GateElevation view = new GateElevation(gate, scale);
        view.surroundings();
        view.members();
        view.hardware();
        view.marks.addAll(MemberBalloons.of(gate.leaf(), gate.outside(), scale, view.marks));
        return Drawing.of("Frame of " + named(gate) + ", from outside", scale, view.marks);
    }

    /** The finished gate for the customer: boards, hinges, latch, sizes, and nothing of the frame. */
    public static Drawing picture(GateSubject gate, Scale scale) {
        return new GateElevation(gate, scale).picture();
    }

    /** The finished leaf without posts and ground, its pin axis at nothing: to be set into a view of the whole run. */
    static List<Mark> leafOnly(GateSubject gate, Scale scale) {
        GateElevation view = new GateElevation(gate, scale);
        view.infill();
        view.hardware();
        return List.copyOf(view.marks);
    }

    /** How far a rod reaches up its leaf and down into its sleeve, and a strip over each stile, on a drawing. */
    private static final double ROD_UP = 0.4;

    private static final double ROD_IN_GROUND_IN = 8;
    private static final double STRIP_ON_LEAF_IN = 0.6;

    /** The frame without posts and ground, its pin axis at nothing: to be set into a view of a pair. */
    static List<Mark> frameOnly(GateSubject gate, Scale scale) {
        GateElevation view = new GateElevation(gate, scale);
        view.members();
        view.hardware();
        return List.copyOf(view.marks);
    }

    private void infill() {
        Look board = Look.thin(Layer.PICKETS).of(leaf.id());
        if (leaf.nailers().isEmpty()) {
            marks.addAll(SteelInfill.of(leaf, outside, scale, this::picketShape));
            members();
            return;
        }
        for (Picket picket : leaf.pickets()) marks.add(Area.edged(picketShape(picket), Material.WOOD, board));
        for (LeafTrim trim : leaf.trim()) marks.add(Area.edged(trimShape(trim), Material.WOOD, board));
    }

    private List<Point> trimShape(LeafTrim trim) {
        return trim.corners().stream().map(outside::at).toList();
    }

    private Drawing shop() {
        surroundings();
        if (leaf.nailers().isEmpty()) marks.addAll(SteelInfill.of(leaf, outside, scale, this::picketShape));
        members();
        crest();
        hardware();
        marks.addAll(new ShopDimensions(gate, shapes, scale).under(groundLow()));
        marks.addAll(new ShopMarks(gate, scale).around(marks));
        return Drawing.of(capital(named(gate)) + ", shop drawing, from outside", scale, marks);
    }

    private Drawing picture() {
        surroundings();
        infill();
        hardware();
        double ground = groundLow();
        DimensionRows below = new DimensionRows(DimensionRows.Side.BELOW, ground - scale.real(0.35), scale);
        below.add(
                outside.at(gate.hingeFaceR(), ground),
                outside.at(gate.latchFaceR(), ground),
                gate.length(gate.plan().opening().clear().inches()) + " clear",
                leaf.id());
        marks.addAll(below.marks());
        Outline outline = leaf.outline();
        double hinge = outline.hingeEdge().inches();
        double latch = outline.latchEdge().inches();
        double side = scale.real(0.5);
        double hingeLine = outside.at(gate.hingeFaceR() - postWide(gate.parts().hingePost()), 0)
                        .x()
                - outside.rightward() * side;
        double latchLine = outside.at(gate.latchFaceR() + gate.latchWideIn(), 0).x() + outside.rightward() * side;
        heightLine(hinge, bottomOf(0), topOf(3), hingeLine);
        heightLine(latch, bottomOf(1), topOf(2), latchLine);
        words();
        return Drawing.of("Gate " + gate.plan().gate() + ", from outside", scale, marks);
    }

    private double bottomOf(int corner) {
        return leaf.outline().corners().get(corner).z().inches();
    }

    private double topOf(int corner) {
        return leaf.outline().corners().get(corner).z().inches();
    }

    private void heightLine(double rIn, double fromZ, double toZ, double lineX) {
        DimensionRows.Side side = lineX < outside.at(rIn, 0).x() ? DimensionRows.Side.LEFT : DimensionRows.Side.RIGHT;
        marks.addAll(new DimensionRows(side, lineX, scale)
                .add(outside.at(rIn, fromZ), outside.at(rIn, toZ), gate.length(toZ - fromZ), leaf.id())
                .marks());
    }

    /** Hinge side, latch side and swing in words on the picture, so that a glance settles the hand. */
    private void words() {
        double top = Math.max(gate.hingePostTop().inches(), gate.latchPostTop().inches()) + scale.real(0.22);
        Point hinge = outside.at(gate.hingeFaceR() - postWide(gate.parts().hingePost()) / 2, top);
        Point latch = outside.at(gate.latchFaceR() + gate.latchWideIn() / 2, top);
        marks.add(Text.small(hinge, "hinges").centred().bold().with(Look.note().of(gate.hingePost())));
        marks.add(Text.small(latch, "latch").centred().bold().with(Look.note().of(gate.latchPost())));
        String way = leaf.hand().swing() == plumbleaf.engine.job.SwingWay.IN
                ? "swings in, away from you"
                : "swings out, towards you";
        Point middle = new Point((hinge.x() + latch.x()) / 2, top + scale.real(0.2));
        marks.add(Text.small(middle, way).centred().with(Look.note()));
    }

    /** The infill's top where it leaves the frame. */
    private void crest() {
        Crest crest = leaf.outline().crest();
        if (!crest.isCurved() && crest.step().isZero()) return;
        List<Point> line = leaf.outline().crestLine().stream().map(outside::at).toList();
        marks.add(Stroke.through(
                line, Look.dimension().as(LineKind.CENTRE).in(Ink.SECOND).of(leaf.id())));
    }

    private List<Point> picketShape(Picket picket) {
        return MemberShapes.seen(PicketShape.of(picket, leaf.outline()), outside);
    }

    static double postWide(plumbleaf.engine.section.PostStock section) {
        return section.width().inches();
    }

    private double groundLow() {
        double far = gate.latchFaceR() + gate.latchWideIn() + GROUND_BEYOND_IN;
        double near = gate.hingeFaceR() - postWide(gate.parts().hingePost()) - GROUND_BEYOND_IN;
        return Math.min(gate.groundZ(near), gate.groundZ(far)) - scale.real(0.16);
    }

    private void surroundings() {
        double hingeBack = gate.hingeFaceR() - postWide(gate.parts().hingePost());
        double latchBack = gate.latchFaceR() + gate.latchWideIn();
        post(hingeBack, gate.hingeFaceR(), gate.hingePostTop().inches(), gate.hingePost());
        if (gate.isPair()) otherLeaf(latchBack);
        else post(gate.latchFaceR(), latchBack, gate.latchPostTop().inches(), gate.latchPost());
        List<Point> surface = MemberShapes.seen(
                List.of(
                        new Point(hingeBack - GROUND_BEYOND_IN, gate.groundZ(hingeBack - GROUND_BEYOND_IN)),
                        new Point(latchBack + GROUND_BEYOND_IN, gate.groundZ(latchBack + GROUND_BEYOND_IN))),
                outside);
        marks.addAll(GroundLine.along(surface, scale.real(0.16)));
    }

    /** The meeting stile of the other leaf, so that the gap between them can be seen. */
    private void otherLeaf(double backR) {
        Outline outline = leaf.outline();
        double low = outline.corners().get(1).z().inches();
        double high = outline.corners().get(2).z().inches();
        Look look = Look.hidden(Layer.GATE).as(LineKind.PHANTOM).of(gate.closesOn());
        marks.add(Stroke.outline(
                Box.of(outside.at(gate.latchFaceR(), low), outside.at(backR, high))
                        .corners(),
                look));
        marks.add(Text.small(outside.at((gate.latchFaceR() + backR) / 2, high + scale.real(0.1)), gate.closesOn())
                .centred()
                .with(Look.note().of(gate.closesOn())));
    }

    private static String named(GateSubject gate) {
        return (gate.isPair() ? "leaf " : "gate ") + gate.mark();
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }

    private void post(double fromR, double toR, double topZ, String id) {
        Look look = Look.visible(Layer.POSTS).of(id);
        double grade = gate.groundZ((fromR + toR) / 2);
        Box steel = Box.of(outside.at(fromR, grade), outside.at(toR, topZ));
        marks.add(Area.edged(steel.corners(), Material.STEEL_FACE, look));
        double foot = grade - POST_BELOW_GRADE_IN;
        for (double x : List.of(steel.minX(), steel.maxX()))
            marks.add(Stroke.line(
                    new Point(x, grade),
                    new Point(x, foot),
                    Look.hidden(Layer.POSTS).of(id)));
    }

    private void members() {
        Look look = Look.visible(Layer.MEMBERS);
        List<Member> order = new ArrayList<>(leaf.members());
        java.util.Collections.reverse(order);
        for (Member member : order) {
            List<Point> shape = shapes.of(member);
            if (shape.size() >= 3)
                marks.add(Area.edged(MemberShapes.seen(shape, outside), Material.STEEL_FACE, look.of(member.id())));
        }
    }

    private void hardware() {
        double stile = leaf.outline().hingeEdge().inches() + 1.5;
        for (HingePin pin : leaf.pins()) {
            Look look = Look.thin(Layer.HARDWARE).of(pin.id());
            double z = pin.z().inches();
            marks.add(Area.edged(
                    Box.of(outside.at(gate.hingeFaceR(), z - 0.45), outside.at(stile, z + 0.45))
                            .corners(),
                    Material.STEEL,
                    look));
            marks.add(Fill.of(
                    Box.of(outside.at(-0.55, z - 1.5), outside.at(0.55, z + 1.5))
                            .corners(),
                    Layer.HARDWARE,
                    Ink.INK));
        }
        for (Fitting fitting : leaf.fittings()) {
            switch (fitting.what()) {
                case "latch" -> latch();
                case "stop strip" -> strip();
                case "drop rod" -> rod();
                default -> {}
            }
        }
    }

    private void latch() {
        Point latch = outside.at(leaf.latchAt());
        double reach = gate.latchFaceR() - leaf.latchAt().r().inches();
        marks.add(Area.edged(
                Box.of(
                                latch.plus(-outside.rightward() * 2.5, -0.6),
                                latch.plus(outside.rightward() * Math.max(reach, 0.5), 0.6))
                        .corners(),
                Material.STEEL,
                Look.thin(Layer.HARDWARE).of(leaf.id() + ".latch")));
    }

    /** Over the meeting gap, on the leaf that opens last. */
    private void strip() {
        double edge = leaf.outline().latchEdge().inches();
        marks.add(Stroke.outline(
                Box.of(
                                outside.at(edge - STRIP_ON_LEAF_IN, bottomOf(1)),
                                outside.at(gate.latchFaceR() + STRIP_ON_LEAF_IN, topOf(2)))
                        .corners(),
                Look.thin(Layer.HARDWARE).of(leaf.id() + ".strip")));
    }

    /** Down the meeting stile into its sleeve. */
    private void rod() {
        double at = leaf.outline().latchEdge().inches()
                - gate.parts().frame().depth().inches() / 2;
        double low = bottomOf(1);
        double high = low + (topOf(2) - low) * ROD_UP;
        double ground = gate.groundZ(at);
        Look look = Look.thin(Layer.HARDWARE).of(leaf.id() + ".rod");
        marks.add(Area.edged(
                Box.of(outside.at(at - 0.4, ground), outside.at(at + 0.4, high)).corners(), Material.STEEL, look));
        for (double side : List.of(-0.4, 0.4))
            marks.add(Stroke.line(
                    outside.at(at + side, ground),
                    outside.at(at + side, ground - ROD_IN_GROUND_IN),
                    look.as(LineKind.HIDDEN)));
    }
}
