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
import plumbleaf.documents.drawing.OrdinateRow;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafTrim;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Nailer;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.gate.Place;

/** Where the infill goes on the frame, from outside: pickets or boards with their pitch, nailers hidden behind them with their bolts, panels with their edges. */
public final class InfillLayout {
    private final GateSubject gate;
    private final Leaf leaf;
    private final Outside outside;
    private final Scale scale;
    private final double datumZ;
    private final List<Mark> marks = new ArrayList<>();

    private InfillLayout(GateSubject gate, Scale scale) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.outside = gate.outside();
        this.scale = scale;
        this.datumZ = leaf.outline().corners().get(0).z().inches();
    }

    public static Drawing of(GateSubject gate, Scale scale) {
        return new InfillLayout(gate, scale).drawn();
    }

    /** What the view is called by. */
    public static String title(Leaf leaf) {
        if (!leaf.panels().isEmpty()) return "Panels";
        if (leaf.nailers().isEmpty()) return "Pickets";
        return leaf.trim().isEmpty() ? "Boards and nailers" : "Boards, nailers and trim";
    }

    private Drawing drawn() {
        if (leaf.nailers().isEmpty()) {
            frame(Look.visible(Layer.MEMBERS));
            marks.addAll(SteelInfill.of(leaf, outside, scale, this::shape));
        } else {
            Look board = Look.thin(Layer.PICKETS).of(leaf.id());
            for (Picket picket : leaf.pickets()) marks.add(Area.edged(shape(picket), Material.CLEAR, board));
            frame(Look.hidden(Layer.MEMBERS));
            for (Nailer nailer : leaf.nailers()) nailer(nailer);
            for (LeafTrim trim : leaf.trim())
                marks.add(
                        Stroke.outline(trim.corners().stream().map(outside::at).toList(), board));
        }
        dimensions();
        return Drawing.of((gate.isPair() ? "Leaf " : "Gate ") + gate.mark() + ", infill from outside", scale, marks);
    }

    private List<Point> shape(Picket picket) {
        return MemberShapes.seen(PicketShape.of(picket, leaf.outline()), outside);
    }

    private void frame(Look look) {
        MemberShapes shapes = new MemberShapes(leaf, gate.parts().joint());
        for (Member member : leaf.members()) {
            List<Point> shape = shapes.of(member);
            if (shape.size() >= 3) marks.add(Stroke.outline(MemberShapes.seen(shape, outside), look.of(member.id())));
        }
    }

    private void nailer(Nailer nailer) {
        Look look = Look.hidden(Layer.PICKETS).of(leaf.id());
        List<Point> shape = shape(nailer);
        marks.add(Area.edged(MemberShapes.seen(shape, outside), Material.WOOD, look));
        double slope = slope(nailer);
        for (var bolt : nailer.bolts()) {
            Point at = nailer.upright()
                    ? outside.at(nailer.middle().r().inches(), bolt.inches())
                    : outside.at(
                            bolt.inches(),
                            nailer.middle().z().inches()
                                    + (bolt.inches() - nailer.middle().r().inches()) * slope);
            marks.add(Arc.circle(
                    at,
                    Math.max(0.4, scale.real(0.03)),
                    Look.visible(Layer.HARDWARE).of(leaf.id())));
        }
    }

    private double slope(Nailer nailer) {
        if (nailer.upright()) return 0;
        return leaf.member(nailer.rail())
                .map(rail -> (rail.to().z().inches() - rail.from().z().inches())
                        / (rail.to().r().inches() - rail.from().r().inches()))
                .orElse(0.0);
    }

    private double nailerWide() {
        return gate.parts()
                .cladding()
                .match(
                        open -> 0.0,
                        (Cladding.Wood wood) -> wood.style().railWidth().inches(),
                        pickets -> 0.0,
                        mesh -> 0.0,
                        sheet -> 0.0);
    }

    /** A nailer along a rail has plumb ends; an upright one stands plumb. */
    private List<Point> shape(Nailer nailer) {
        double r = nailer.middle().r().inches();
        double z = nailer.middle().z().inches();
        double half = nailer.length().inches() / 2;
        double wide = nailerWide() / 2;
        if (nailer.upright()) return new Box(r - wide, z - half, r + wide, z + half).corners();
        double slope = slope(nailer);
        double level = half / StrictMath.sqrt(1 + slope * slope);
        double plumb = wide * StrictMath.sqrt(1 + slope * slope);
        return List.of(
                new Point(r - level, z - level * slope - plumb),
                new Point(r + level, z + level * slope - plumb),
                new Point(r + level, z + level * slope + plumb),
                new Point(r - level, z - level * slope + plumb));
    }

    /** Heights at both edges from A, and along the foot where the first two pieces stand. */
    private void dimensions() {
        Outline outline = leaf.outline();
        double hinge = outline.hingeEdge().inches();
        double latch = outline.latchEdge().inches();
        double minX = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        for (Mark mark : marks)
            for (var part : mark.drawn(scale)) {
                minX = Math.min(minX, part.extents(scale).minX());
                maxX = Math.max(maxX, part.extents(scale).maxX());
                low = Math.min(low, part.extents(scale).minY());
            }
        boolean right = outside.rightward() > 0;
        double hingeX = right ? minX - scale.real(0.4) : maxX + scale.real(0.4);
        double latchX = right ? maxX + scale.real(0.4) : minX - scale.real(0.4);
        OrdinateRow atHinge = OrdinateRow.heights(hingeX, scale);
        OrdinateRow atLatch = OrdinateRow.heights(latchX, scale);
        atHinge.add(outside.at(hinge, datumZ), gate.length(0), leaf.id());
        for (Nailer nailer : leaf.nailers()) {
            if (nailer.upright()) continue;
            List<Point> shape = shape(nailer);
            height(atHinge, shape.get(0));
            height(atHinge, shape.get(3));
            height(atLatch, shape.get(1));
            height(atLatch, shape.get(2));
        }
        for (LeafTrim trim : leaf.trim())
            for (int corner : List.of(0, 3)) {
                Place at = trim.corners().get(corner);
                height(atHinge, new Point(at.r().inches(), at.z().inches()));
            }
        List<Picket> along = firstRow();
        if (!along.isEmpty()) {
            ends(atHinge, along.get(0), true);
            ends(atLatch, along.get(along.size() - 1), false);
        }
        marks.addAll(atHinge.marks());
        marks.addAll(atLatch.marks());
        if (along.isEmpty() || along.get(0).lying()) return;
        pitch(along, low, hinge, latch);
    }

    /** Where an outermost standing piece begins and ends, on its edge towards the leaf's edge. */
    private void ends(OrdinateRow row, Picket picket, boolean atHinge) {
        if (picket.lying()) return;
        List<Point> shape = PicketShape.of(picket, leaf.outline());
        double edge = atHinge
                ? shape.stream().mapToDouble(Point::x).min().orElse(0)
                : shape.stream().mapToDouble(Point::x).max().orElse(0);
        double bottom = Double.POSITIVE_INFINITY;
        double top = Double.NEGATIVE_INFINITY;
        for (Point point : shape) {
            if (Math.abs(point.x() - edge) > 0.05) continue;
            bottom = Math.min(bottom, point.y());
            top = Math.max(top, point.y());
        }
        height(row, new Point(edge, bottom));
        height(row, new Point(edge, top));
    }

    private void height(OrdinateRow row, Point at) {
        row.add(outside.at(at.x(), at.y()), gate.length(at.y() - datumZ), leaf.id());
    }

    /** One piece for each place along the leaf, from the hinges. */
    private List<Picket> firstRow() {
        List<Picket> row = new ArrayList<>();
        for (Picket picket : leaf.pickets())
            if (row.isEmpty()
                    || picket.r().inches() > row.get(row.size() - 1).r().inches() + 1e-6) row.add(picket);
        return row;
    }

    private void pitch(List<Picket> along, double low, double hinge, double latch) {
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, low - scale.real(0.3), scale);
        Picket first = along.get(0);
        Picket last = along.get(along.size() - 1);
        double from = first.r().inches();
        double to = last.r().inches() + last.width().inches();
        if (from - hinge > 0.05) dimension(rows, hinge, from, low, "");
        if (latch - to > 0.05) dimension(rows, to, latch, low, "");
        dimension(rows, from, from + first.width().inches(), low, "");
        if (along.size() > 2) {
            double second = along.get(1).r().inches();
            double third = along.get(2).r().inches();
            dimension(rows, second, third, low, " pitch");
        }
        dimension(rows, from, to, low, ", " + along.size() + " pieces");
        marks.addAll(rows.marks());
    }

    private void dimension(DimensionRows rows, double from, double to, double low, String word) {
        rows.add(outside.at(from, low), outside.at(to, low), gate.between(from, to) + word, leaf.id());
    }
}
