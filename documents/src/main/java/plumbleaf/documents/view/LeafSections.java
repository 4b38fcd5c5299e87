package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.DimensionRows;
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
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.takeoff.BoltItem;

/** A leaf cut through level at its latch side and at its hinge side, where whoever hangs it asks how it is made. Sizes that the elevation has are not said again. */
public final class LeafSections {
    /** What of the leaf is shown beyond its stile. */
    private static final double SHOWN_IN = 7;

    private final GateSubject gate;
    private final Leaf leaf;
    private final Outside outside;
    private final Scale scale;
    private final double half;
    private final double deep;
    private final List<Mark> marks = new ArrayList<>();

    private LeafSections(GateSubject gate, Scale scale) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.outside = gate.outside();
        this.scale = scale;
        Section frame = gate.parts().frame();
        this.half = frame.width().inches() / 2;
        this.deep = frame.depth().inches();
    }

    /** A level cut through latch stile and what it closes on, seen from above, outside below. */
    public static Drawing latchSide(GateSubject gate, Scale scale) {
        return new LeafSections(gate, scale).latch();
    }

    /** A level cut through hinge stile and hinge post at a hinge, seen from above, outside below. */
    public static Drawing hingeSide(GateSubject gate, Scale scale) {
        return new LeafSections(gate, scale).hinge();
    }

    static String name(GateSubject gate, String what) {
        return (gate.isPair() ? "Leaf " : "Gate ") + gate.mark() + ", " + what;
    }

    /** On an upright section outside lies at the left. */
    static double side(Cladding.Wood wood) {
        return wood.face() == FinishedFace.IN ? 1 : -1;
    }

    private Drawing latch() {
        double edge = leaf.outline().latchEdge().inches();
        stile(edge - deep, edge, edge - SHOWN_IN, edge);
        double closes = gate.latchFaceR();
        if (gate.isPair()) {
            marks.addAll(TubeCut.of(
                    gate.parts().frame(),
                    Box.of(outside.at(closes, -half), outside.at(closes + deep, half)),
                    Look.visible(Layer.MEMBERS).of(leaf.id())));
            marks.add(Text.small(outside.at(closes + deep + scale.real(0.3), 0), gate.closesOn())
                    .centred()
                    .bold());
        } else {
            marks.addAll(PostCut.of(outside, gate.parts().latchPost(), closes, 1, gate.latchPost(), scale));
        }
        double bar = -swings() * (half + 0.4);
        marks.add(Stroke.line(
                outside.at(edge - deep - 1, bar),
                outside.at(closes + 1, bar),
                Look.centre(Layer.HARDWARE).of(leaf.id())));
        double low = low();
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, low, scale);
        rows.add(outside.at(edge - deep, -half), outside.at(edge, -half), gate.length(deep), leaf.id());
        rows.add(outside.at(edge, -half), outside.at(closes, -half), gate.between(edge, closes), leaf.id());
        marks.addAll(rows.marks());
        sides(edge - SHOWN_IN / 2, rows.outerEdge());
        List<String> words = new ArrayList<>();
        words.add(gate.parts().latch().name() + ": works with a gap of");
        words.add(gate.length(gate.parts().latch().least().inches()) + " to "
                + gate.length(gate.parts().latch().greatest().inches()) + ", reaches "
                + gate.length(gate.parts().latch().bite().inches()));
        words(List.of(words), edge - SHOWN_IN / 2, rows.outerEdge());
        return Drawing.of(name(gate, "section at the latch"), scale, marks);
    }

    private double swings() {
        return leaf.hand().swing() == SwingWay.IN ? 1 : -1;
    }

    private Drawing hinge() {
        double edge = leaf.outline().hingeEdge().inches();
        double face = gate.hingeFaceR();
        stile(edge, edge + deep, edge, edge + SHOWN_IN);
        marks.addAll(PostCut.of(outside, gate.parts().hingePost(), face, -1, gate.hingePost(), scale));
        double off = swings() * gate.parts().hinge().swingOffset().inches();
        double plate = gate.parts().hinge().fixing().plateThickness().inches();
        Look look = Look.visible(Layer.HARDWARE).of(leaf.pins().get(0).id());
        Point pin = outside.at(0, off);
        marks.add(Arc.circle(pin, 0.31, look));
        marks.add(Stroke.line(pin, outside.at(face, off), look.as(LineKind.THIN)));
        marks.add(Area.edged(
                Box.of(outside.at(edge, swings() * half), outside.at(edge + deep, swings() * (half + plate)))
                        .corners(),
                Material.STEEL,
                look));
        double low = low();
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, low, scale);
        rows.add(outside.at(face, -half), outside.at(0, -half), gate.between(face, 0), leaf.id());
        rows.add(outside.at(face, -half), outside.at(edge, -half), gate.between(face, edge), leaf.id());
        rows.add(outside.at(edge, -half), outside.at(edge + deep, -half), gate.length(deep), leaf.id());
        marks.addAll(rows.marks());
        Look axis = Look.centre(Layer.HARDWARE).of(leaf.id());
        marks.add(Stroke.line(outside.at(-0.8, 0), outside.at(edge + SHOWN_IN, 0), axis));
        if (Math.abs(off) > 0.05) {
            marks.add(Stroke.line(outside.at(-0.8, off), outside.at(edge + SHOWN_IN, off), axis));
        }
        sides(edge + SHOWN_IN / 2, rows.outerEdge());
        List<List<String>> words = new ArrayList<>();
        words.add(List.of(
                gate.parts().hinge().name(),
                "pin " + gate.length(Math.abs(off)) + " off the leaf's middle, on the side it swings to"));
        for (BoltItem item : BoltItem.of(leaf, gate.parts())) {
            if (!item.where().startsWith("hinges")) continue;
            words.add(List.of(
                    item.where() + ": " + item.count() / leaf.pins().size() + " a hinge, " + item.name() + ",",
                    "grip " + gate.length(item.stack().grip().inches())
                            + item.sleeve()
                                    .map(is -> ", crush sleeve " + gate.length(is.inches()))
                                    .orElse("")));
        }
        gate.parts()
                .hinge()
                .fixing()
                .toPost()
                .match(
                        welded -> words.add(List.of(
                                "post plates: fillets of "
                                        + gate.length(welded.leg().inches()) + " down both sides,",
                                gate.length(gate.parts()
                                                .hinge()
                                                .fixing()
                                                .plateHeight()
                                                .inches()) + " high, " + gate.length(plate) + " thick")),
                        bolted -> true,
                        lagged -> words.add(List.of(
                                "post: " + lagged.count() + " lag screws a hinge, "
                                        + gate.length(lagged.diameter().inches()) + " x "
                                        + gate.length(lagged.length().inches()) + ",",
                                "lead hole " + gate.length(lagged.lead().inches()))));
        words(words, edge + SHOWN_IN / 2, rows.outerEdge());
        return Drawing.of(name(gate, "section at a hinge"), scale, marks);
    }

    /** A stile with what of the infill lies beside it, as far as shown. */
    private void stile(double from, double to, double shownFrom, double shownTo) {
        marks.addAll(TubeCut.of(
                gate.parts().frame(),
                Box.of(outside.at(from, -half), outside.at(to, half)),
                Look.visible(Layer.MEMBERS).of(leaf.id())));
        gate.parts()
                .cladding()
                .match(
                        open -> marks,
                        wood -> {
                            double out = side(wood);
                            double nailer = wood.style().railThickness().inches();
                            double board = wood.style().boardThickness().inches();
                            Look look = Look.thin(Layer.PICKETS).of(leaf.id());
                            if (wood.style().lying()) {
                                marks.add(Area.edged(
                                        Box.of(
                                                        outside.at(shownFrom, out * (half + nailer)),
                                                        outside.at(shownTo, out * (half + nailer + board)))
                                                .corners(),
                                        Material.WOOD,
                                        look));
                                return marks;
                            }
                            marks.add(Area.edged(
                                    Box.of(
                                                    outside.at(shownFrom, out * half),
                                                    outside.at(shownTo, out * (half + nailer)))
                                            .corners(),
                                    Material.WOOD,
                                    look));
                            for (Picket picket : leaf.pickets()) {
                                double r = Math.max(shownFrom, picket.r().inches());
                                double end = Math.min(
                                        shownTo,
                                        picket.r().inches() + picket.width().inches());
                                if (end - r > 0.1)
                                    marks.add(Area.edged(
                                            Box.of(
                                                            outside.at(r, out * (half + nailer)),
                                                            outside.at(end, out * (half + nailer + board)))
                                                    .corners(),
                                            Material.END_GRAIN,
                                            look));
                            }
                            return marks;
                        },
                        pickets -> marks,
                        mesh -> marks,
                        sheet -> marks);
    }

    /** Where the dimensions below begin: under posts, boards and what swings out. */
    private double low() {
        double post = Math.max(
                gate.parts().hingePost().depth().inches(),
                gate.parts().latchPost().depth().inches());
        double clad = gate.parts()
                .cladding()
                .match(
                        open -> 0.0,
                        wood -> wood.style().railThickness().inches()
                                + wood.style().boardThickness().inches(),
                        pickets -> 0.0,
                        mesh -> 0.0,
                        sheet -> 0.0);
        return -Math.max(post / 2, half + clad) - scale.real(0.4);
    }

    private void sides(double r, double outerEdge) {
        double x = outside.at(r, 0).x();
        double high = -low() - scale.real(0.1);
        marks.add(Text.small(new Point(x, high), "inside").centred().bold());
        marks.add(Text.small(new Point(x, outerEdge - scale.real(0.1)), "outside")
                .centred()
                .bold());
    }

    /** Words under a section, one piece under the other. */
    private void words(List<List<String>> pieces, double r, double outerEdge) {
        double x = outside.at(r, 0).x();
        double y = outerEdge - scale.real(0.4);
        for (List<String> piece : pieces) {
            for (String line : piece) {
                marks.add(Text.small(new Point(x, y), line).centred());
                y -= scale.real(0.16);
            }
            y -= scale.real(0.06);
        }
    }
}
