package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.SwingArc;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.gate.SwingAxes;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Offset;

/** Gates from above: the closed leaf, the arc it swings, or the strip that a slide runs back over. */
final class GatesOnPlan {
    private final Site site;
    private final Scale scale;
    private final Labels labels;
    private final List<Mark> marks = new ArrayList<>();

    private GatesOnPlan(Site site, Scale scale, Labels labels) {
        this.site = site;
        this.scale = scale;
        this.labels = labels;
    }

    static List<Mark> swing(Site site, PlacedGate gate, Scale scale, Labels labels) {
        GatesOnPlan plan = new GatesOnPlan(site, scale, labels);
        plan.gate(gate);
        return plan.marks;
    }

    static List<Mark> slide(Site site, SlidePlan slide, Scale scale, Labels labels) {
        GatesOnPlan plan = new GatesOnPlan(site, scale, labels);
        plan.slide(slide);
        return plan.marks;
    }

    private void gate(PlacedGate placed) {
        GateSubject gate = placed.gate();
        SwingAxes axes = placed.axes();
        String id = gate.plan().gate();
        String of = id + " " + gate.leaf().id();
        double latch = gate.leaf().outline().latchEdge().inches();
        Point pin = at(axes, 0, 0);
        double closed = angle(axes.along());
        double side = angle(axes.side());
        double turn = Math.signum(StrictMath.sin(side - closed));
        double opens = gate.swing().opens().radians();
        marks.add(Stroke.line(
                pin,
                at(axes, latch, 0),
                Look.visible(Layer.GATE).as(LineKind.HEAVY).in(Ink.CHALK).of(of)));
        marks.add(new SwingArc(
                pin,
                latch,
                closed,
                closed + turn * opens,
                Look.thin(Layer.SWING).of(of)));
        if (gate.at() > 0) return;
        marks.addAll(labels.beside(
                at(axes, latch / 2, 0),
                List.of(
                        "gate " + id,
                        site.job().display().length(gate.plan().opening().clear()) + " clear"),
                side + Math.PI,
                Look.note().of(of)));
    }

    /** The closed leaf with its tail, and the strip it needs until it stands open. */
    private void slide(SlidePlan slide) {
        String of = slide.leaf().id();
        Offset half = Offset.inches(slide.leaf().make().tube().width().inches() / 2 + scale.real(0.02));
        List<Point> strip = slide.envelope(half).stream().map(Site::at).toList();
        marks.add(Stroke.outline(strip, Look.hidden(Layer.SWING).of(of)));
        for (int i = 0; i < strip.size(); i++) labels.keepFreeLine(strip.get(i), strip.get((i + 1) % strip.size()));
        Point tail = at(slide.at(slide.shape().tailEnd(), Offset.ZERO));
        Point nose = at(slide.at(slide.shape().nose(), Offset.ZERO));
        marks.add(Stroke.line(
                tail,
                nose,
                Look.visible(Layer.GATE).as(LineKind.HEAVY).in(Ink.CHALK).of(of)));
        double inward = angle(slide.outward()) + Math.PI;
        marks.addAll(labels.beside(
                at(slide.at(Offset.inches(slide.shape().opening().inches() / 2), Offset.ZERO)),
                List.of(
                        "slide gate " + of.substring(0, of.length() - 1),
                        site.job().display().length(slide.shape().opening()) + " clear"),
                inward,
                Look.note().of(of)));
        marks.addAll(labels.beside(
                at(slide.at(
                        Offset.inches((slide.shape().openEnd().inches()
                                        + slide.shape().tailEnd().inches())
                                / 2),
                        Offset.ZERO)),
                List.of(
                        "run-back, keep clear",
                        site.job().display().length(slide.shape().openEnd().size())),
                inward,
                Look.note().of(of)));
    }

    private static double angle(Direction direction) {
        return StrictMath.atan2(direction.north(), direction.east());
    }

    private static Point at(PlanPoint place) {
        return Site.at(place);
    }

    private static Point at(SwingAxes axes, double alongIn, double sideIn) {
        return at(axes.plan(Offset.inches(alongIn), Offset.inches(sideIn)));
    }
}
