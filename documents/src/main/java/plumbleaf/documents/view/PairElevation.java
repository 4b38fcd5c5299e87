package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.DimensionRows;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LinearDimension;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;

/** Both leaves of a pair between their posts, from outside: what hangs where, how they meet, and the sizes that hold them together. */
public final class PairElevation {
    private static final double BELOW_GRADE_IN = 10;
    private static final double GROUND_BEYOND_IN = 14;

    private final GateSubject a;
    private final GateSubject b;
    private final Side active;
    private final Scale scale;
    private final double dx;
    private final double dz;
    private final List<Mark> marks = new ArrayList<>();

    private PairElevation(GateSubject a, GateSubject b, Side active, Scale scale) {
        this.a = a;
        this.b = b;
        this.active = active;
        this.scale = scale;
        double clear = a.plan().opening().clear().inches();
        // The pins stand off their posts, towards each other.
        this.dx = clear + a.hingeFaceR() + b.hingeFaceR();
        this.dz = b.pinElevation().minus(a.pinElevation()).inches();
    }

    /** Frames without boards, for shop and crew. */
    public static Drawing frames(GateSubject a, GateSubject b, Side active, Scale scale) {
        return new PairElevation(a, b, active, scale).drawn(true);
    }

    /** As the customer will see it. */
    public static Drawing picture(GateSubject a, GateSubject b, Side active, Scale scale) {
        return new PairElevation(a, b, active, scale).drawn(false);
    }

    private Drawing drawn(boolean frames) {
        posts();
        ground();
        marks.addAll(frames ? GateElevation.frameOnly(a, scale) : GateElevation.leafOnly(a, scale));
        marks.addAll(Shifted.by(
                frames ? GateElevation.frameOnly(b, scale) : GateElevation.leafOnly(b, scale), dx, dz, scale));
        dimensions();
        words();
        return Drawing.of("Pair " + a.plan().gate() + ", from outside", scale, marks);
    }

    /** x of a place on leaf b. */
    private double xb(double rIn) {
        return dx - rIn;
    }

    private void posts() {
        double wideA = a.parts().hingePost().width().inches();
        double wideB = b.parts().hingePost().width().inches();
        post(
                a.hingeFaceR() - wideA,
                a.hingeFaceR(),
                a.groundZ(0),
                a.hingePostTop().inches(),
                a.hingePost());
        post(
                xb(b.hingeFaceR()),
                xb(b.hingeFaceR() - wideB),
                dz + b.groundZ(0),
                dz + b.hingePostTop().inches(),
                b.hingePost());
    }

    private void post(double fromX, double toX, double gradeZ, double topZ, String id) {
        Look look = Look.visible(Layer.POSTS).of(id);
        marks.add(Area.edged(
                Box.of(new Point(fromX, gradeZ), new Point(toX, topZ)).corners(), Material.STEEL_FACE, look));
        for (double x : List.of(fromX, toX))
            marks.add(Stroke.line(
                    new Point(x, gradeZ),
                    new Point(x, gradeZ - BELOW_GRADE_IN),
                    Look.hidden(Layer.POSTS).of(id)));
    }

    private double meetX() {
        return (a.leaf().outline().latchEdge().inches() + a.latchFaceR()) / 2;
    }

    private void ground() {
        double left = a.hingeFaceR() - GROUND_BEYOND_IN;
        double right = xb(b.hingeFaceR() - GROUND_BEYOND_IN);
        marks.addAll(GroundLine.along(
                List.of(
                        new Point(left, a.groundZ(left)),
                        new Point(meetX(), a.groundZ(meetX())),
                        new Point(right, dz + b.groundZ(b.hingeFaceR() - GROUND_BEYOND_IN))),
                scale.real(0.16)));
    }

    private double low() {
        double end = dz + b.groundZ(0);
        return Math.min(Math.min(a.groundZ(0), end), a.groundZ(meetX())) - scale.real(0.45);
    }

    private void dimensions() {
        Outline left = a.leaf().outline();
        Outline right = b.leaf().outline();
        double foot = low();
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, foot, scale);
        row(rows, a.hingeFaceR(), left.hingeEdge().inches(), a.leaf().id());
        row(rows, left.hingeEdge().inches(), left.latchEdge().inches(), a.leaf().id());
        row(
                rows,
                left.latchEdge().inches(),
                xb(right.latchEdge().inches()),
                a.plan().gate());
        row(
                rows,
                xb(right.latchEdge().inches()),
                xb(right.hingeEdge().inches()),
                b.leaf().id());
        row(rows, xb(right.hingeEdge().inches()), xb(b.hingeFaceR()), b.leaf().id());
        rows.add(
                new Point(a.hingeFaceR(), foot),
                new Point(xb(b.hingeFaceR()), foot),
                a.length(a.plan().opening().clear().inches()) + " clear opening",
                a.plan().gate());
        marks.addAll(rows.marks());
        height(a, left.hingeEdge().inches(), 0, 3, true);
        height(b, xb(right.hingeEdge().inches()), 0, 3, false);
    }

    private void row(DimensionRows rows, double fromX, double toX, String of) {
        rows.add(new Point(fromX, low()), new Point(toX, low()), a.between(fromX, toX), of);
    }

    private void height(GateSubject leaf, double x, int bottom, int top, boolean atLeft) {
        double up = atLeft ? 0 : dz;
        double from = leaf.leaf().outline().corners().get(bottom).z().inches();
        double to = leaf.leaf().outline().corners().get(top).z().inches();
        double post = leaf.parts().hingePost().width().inches();
        double off = scale.real(LinearDimension.fits(leaf.length(to - from), scale.paper(to - from)) ? 0.45 : 1.05);
        double line = atLeft ? a.hingeFaceR() - post - off : xb(b.hingeFaceR()) + post + off;
        marks.addAll(new DimensionRows(atLeft ? DimensionRows.Side.LEFT : DimensionRows.Side.RIGHT, line, scale)
                .add(
                        new Point(x, up + from),
                        new Point(x, up + to),
                        leaf.length(to - from),
                        leaf.leaf().id())
                .marks());
    }

    private void words() {
        double top = Math.max(a.hingePostTop().inches(), dz + b.hingePostTop().inches()) + scale.real(0.2);
        double wordsWide = scale.real(Lettering.width("G1a, opens first", Text.SMALL, Text.Weight.REGULAR) + 0.15);
        boolean narrow = middleB() - middleOf(a) < wordsWide;
        double up = narrow ? scale.real(0.2) : 0;
        middleOf(a, 0, top);
        middleOf(b, 1, top + up);
        String way =
                a.leaf().hand().swing() == SwingWay.IN ? "both swing in, away from you" : "both swing out, towards you";
        marks.add(Text.small(new Point(meetX(), top + up + scale.real(0.2)), way)
                .centred()
                .with(Look.note()));
        for (GateSubject leaf : List.of(a, b)) {
            double behind = leaf.hingeFaceR() - leaf.parts().hingePost().width().inches() / 2;
            marks.add(Text.small(new Point(leaf.at() == 0 ? behind : xb(behind), top + up + scale.real(0.4)), "hinges")
                    .centred()
                    .bold()
                    .with(Look.note().of(leaf.hingePost())));
        }
    }

    private static double middleOf(GateSubject leaf) {
        Outline outline = leaf.leaf().outline();
        return (outline.hingeEdge().inches() + outline.latchEdge().inches()) / 2;
    }

    private double middleB() {
        return xb(middleOf(b));
    }

    private void middleOf(GateSubject leaf, int at, double top) {
        double r = middleOf(leaf);
        boolean first = (active == Side.LEFT) == (at == 0);
        marks.add(Text.small(
                        new Point(at == 0 ? r : xb(r), top),
                        leaf.leaf().id() + (first ? ", opens first" : ", opens last"))
                .centred()
                .with(Look.note().of(leaf.leaf().id())));
    }
}
