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
import plumbleaf.documents.drawing.SwingArc;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.section.PostStock;

/** The gate cut through at a hinge, seen from above, outside below: pins, gaps, and which way it swings. */
public final class GatePlanDetail {
    /** The swing begins here; all of it is on the swing plan. */
    private static final double SHOWN_RAD = 0.3;

    private final GateSubject gate;
    private final Leaf leaf;
    private final Outside outside;
    private final Scale scale;
    private final List<Mark> marks = new ArrayList<>();

    private GatePlanDetail(GateSubject gate, Scale scale) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.outside = gate.outside();
        this.scale = scale;
    }

    public static Drawing of(GateSubject gate, Scale scale) {
        return new GatePlanDetail(gate, scale).drawn();
    }

    private Drawing drawn() {
        post(gate.parts().hingePost(), gate.hingeFaceR(), -1, gate.hingePost());
        if (gate.isPair()) otherLeaf();
        else post(gate.parts().latchPost(), gate.latchFaceR(), 1, gate.latchPost());
        double half = gate.parts().frame().width().inches() / 2;
        double hinge = leaf.outline().hingeEdge().inches();
        double latch = leaf.outline().latchEdge().inches();
        marks.add(Area.edged(
                Box.of(outside.at(hinge, -half), outside.at(latch, half)).corners(),
                Material.STEEL_FACE,
                Look.visible(Layer.GATE).of(leaf.id())));
        cladding(hinge, latch, half);
        double way = leaf.hand().swing() == SwingWay.IN ? 1 : -1;
        double off = gate.parts().hinge().swingOffset().inches();
        Point pin = outside.at(0, way * off);
        marks.add(Arc.circle(
                pin, 0.5, Look.visible(Layer.HARDWARE).of(leaf.pins().get(0).id())));
        double angle = Math.min(opens(), SHOWN_RAD);
        double turn = outside.rightward() * way;
        double closed = outside.alongRad() - turn * StrictMath.atan2(off, latch);
        double reach = Math.sqrt(latch * latch + off * off);
        marks.add(new SwingArc(
                pin,
                reach,
                closed,
                closed + turn * angle,
                Look.thin(Layer.SWING).of(leaf.id())));
        double low =
                -Math.max(halfDeep() + scale.real(0.45), way > 0 ? 0 : latch * StrictMath.sin(angle) + scale.real(0.2));
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, low, scale);
        rows.add(
                outside.at(gate.hingeFaceR(), -half),
                outside.at(0, -half),
                gate.between(gate.hingeFaceR(), 0),
                leaf.id());
        rows.add(
                outside.at(gate.hingeFaceR(), -half),
                outside.at(hinge, -half),
                gate.between(gate.hingeFaceR(), hinge),
                leaf.id());
        rows.add(
                outside.at(latch, -half),
                outside.at(gate.latchFaceR(), -half),
                gate.between(latch, gate.latchFaceR()),
                leaf.id());
        if (!gate.isPair())
            rows.add(
                    outside.at(gate.hingeFaceR(), -half),
                    outside.at(gate.latchFaceR(), -half),
                    gate.length(gate.plan().opening().clear().inches()),
                    leaf.id());
        marks.addAll(rows.marks());
        double middle =
                outside.at((gate.hingeFaceR() + gate.latchFaceR()) / 2, 0).x();
        marks.add(Text.small(new Point(middle, rows.outerEdge() - scale.real(0.12)), "outside: you stand here")
                .centred()
                .bold());
        marks.add(Text.small(
                        new Point(middle, (way > 0 ? latch * StrictMath.sin(angle) : halfDeep()) + scale.real(0.2)),
                        "inside")
                .centred()
                .bold());
        return Drawing.of(
                (gate.isPair() ? "Leaf " : "Gate ") + gate.mark() + ", plan at the lower hinge", scale, marks);
    }

    /** The meeting stile of the other leaf. */
    private void otherLeaf() {
        double half = gate.parts().frame().width().inches() / 2;
        double from = gate.latchFaceR();
        Look look = Look.hidden(Layer.GATE).of(gate.closesOn());
        marks.add(Stroke.outline(
                Box.of(outside.at(from, -half), outside.at(from + gate.latchWideIn(), half))
                        .corners(),
                look));
        marks.add(Text.small(outside.at(from + gate.latchWideIn() + scale.real(0.2), 0), gate.closesOn())
                .centred()
                .with(Look.note().of(gate.closesOn())));
    }

    private double opens() {
        return gate.swing().opens().radians();
    }

    private double halfDeep() {
        return Math.max(
                        gate.parts().hingePost().depth().inches(),
                        gate.parts().latchPost().depth().inches())
                / 2;
    }

    private void cladding(double hinge, double latch, double half) {
        gate.parts()
                .cladding()
                .match(
                        open -> marks,
                        wood -> {
                            boards(wood, hinge, latch, half);
                            return marks;
                        },
                        pickets -> marks,
                        mesh -> marks,
                        sheet -> marks);
    }

    private void boards(Cladding.Wood wood, double hinge, double latch, double half) {
        boolean inside = wood.face() == FinishedFace.IN;
        double sign = inside ? 1 : -1;
        double nailer = wood.style().railThickness().inches();
        double board = wood.style().boardThickness().inches();
        Look look = Look.thin(Layer.PICKETS).of(leaf.id());
        if (wood.style().lying()) {
            lying(wood, sign, half, hinge, latch, look);
            return;
        }
        marks.add(Area.edged(
                Box.of(outside.at(hinge, sign * half), outside.at(latch, sign * (half + nailer)))
                        .corners(),
                Material.WOOD,
                look));
        for (var picket : leaf.pickets())
            marks.add(Area.edged(
                    Box.of(
                                    outside.at(picket.r().inches(), sign * (half + nailer)),
                                    outside.at(
                                            picket.r().inches() + picket.width().inches(),
                                            sign * (half + nailer + board)))
                            .corners(),
                    Material.END_GRAIN,
                    look));
    }

    /** Upright nailers from their end, and the face of the boards before them. */
    private void lying(Cladding.Wood wood, double sign, double half, double hinge, double latch, Look look) {
        double nailer = wood.style().railThickness().inches();
        double board = wood.style().boardThickness().inches();
        double reach = wood.style().railWidth().inches() / 2;
        for (var each : leaf.nailers()) {
            double r = each.middle().r().inches();
            marks.add(Area.edged(
                    Box.of(outside.at(r - reach, sign * half), outside.at(r + reach, sign * (half + nailer)))
                            .corners(),
                    Material.END_GRAIN,
                    look));
        }
        marks.add(Area.edged(
                Box.of(outside.at(hinge, sign * (half + nailer)), outside.at(latch, sign * (half + nailer + board)))
                        .corners(),
                Material.WOOD,
                look));
    }

    private void post(PostStock section, double face, int away, String id) {
        marks.addAll(PostCut.of(outside, section, face, away, id, scale));
    }
}
