package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.LinearDimension;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.HingeForce;

/**
 * Leaf and hinge post cut apart, seen from outside, with what each does to the other in one case: the leaf's weight at its center of
 * gravity, the hinges' pull and push, and what the post brings to its footing. Arrows show directions; their lengths are not to scale.
 */
public final class FreeBody {
    private static final double ARROW_IN = 0.55;
    private static final double APART_IN = 1.5;

    private final GateSubject gate;
    private final Leaf leaf;
    private final CaseForces forces;
    private final Scale scale;
    private final Labels labels;
    private final List<Mark> marks = new ArrayList<>();

    private FreeBody(GateSubject gate, CaseForces forces, Scale scale) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.forces = forces;
        this.scale = scale;
        this.labels = new Labels(scale);
    }

    public static Drawing of(GateSubject gate, CaseForces forces, Scale scale) {
        return new FreeBody(gate, forces, scale).drawn();
    }

    /** Where the post's axis is drawn: off the leaf, so that arrows have room. */
    private double postR() {
        return -scale.real(APART_IN);
    }

    private Drawing drawn() {
        List<Point> outline = leaf.outline().corners().stream()
                .map(place -> gate.outside().at(place))
                .toList();
        marks.add(Stroke.outline(outline, Look.visible(Layer.MEMBERS).of(leaf.id())));
        for (int i = 0; i < outline.size(); i++)
            labels.keepFreeLine(outline.get(i), outline.get((i + 1) % outline.size()));
        weight();
        Point foot = gate.outside().at(postR(), 0);
        Point head = gate.outside().at(postR(), gate.hingePostTop().inches());
        marks.add(Stroke.line(
                foot, head, Look.visible(Layer.POSTS).as(LineKind.HEAVY).of(gate.hingePost())));
        labels.keepFreeLine(foot, head);
        for (HingeForce hinge : forces.hinges()) hinge(hinge);
        dimensions();
        base(foot);
        return Drawing.of("Leaf " + leaf.id() + ", free bodies", scale, marks);
    }

    private void weight() {
        Point at = gate.outside()
                .at(
                        leaf.weight().centreOfGravity().r().inches(),
                        leaf.weight().centreOfGravity().z().inches());
        marks.add(Arc.circle(at, scale.real(0.05), Look.visible(Layer.NOTES)));
        arrow(at, -Math.PI / 2, pounds("W", leaf.weight().wet().pounds()), -Math.PI / 4);
    }

    /** On the leaf what the post does to it, on the post the same turned round. */
    private void hinge(HingeForce hinge) {
        double z = hinge.z().inches();
        Point onLeaf = gate.outside().at(leaf.outline().hingeEdge().inches(), z);
        Point onPost = gate.outside().at(postR(), z);
        double toLatch = gate.outside().alongRad();
        double pull = hinge.horizontal().pounds();
        if (Math.abs(pull) > 0.5) {
            String words = pounds("H", Math.abs(pull));
            double way = pull > 0 ? toLatch + Math.PI : toLatch;
            marks.addAll(pushOrPull(onLeaf, way, toLatch + Math.PI));
            marks.addAll(pushOrPull(onPost, way + Math.PI, toLatch));
            label(onLeaf.towards(toLatch + Math.PI, scale.real(ARROW_IN / 2)), words, Math.PI / 2);
        }
        double down = hinge.down().pounds();
        if (Math.abs(down) > 0.5) {
            arrow(onLeaf, down > 0 ? Math.PI / 2 : -Math.PI / 2, pounds("V", Math.abs(down)), toLatch);
            arrow(onPost, down > 0 ? -Math.PI / 2 : Math.PI / 2, "", 0);
        }
    }

    /** An arrow in the gap beside a body: away from it where it pulls, to it where it pushes. */
    private List<Mark> pushOrPull(Point at, double way, double outwards) {
        Point far = at.towards(outwards, scale.real(ARROW_IN));
        boolean pulls = StrictMath.cos(way - outwards) > 0;
        return shaft(pulls ? at : far, pulls ? far : at);
    }

    private List<Mark> shaft(Point from, Point to) {
        Look look = Look.visible(Layer.NOTES);
        double way = from.direction(to);
        Point neck = to.towards(way + Math.PI, scale.real(0.12));
        labels.keepFreeLine(from, to);
        return List.of(
                Stroke.line(from, neck, look.as(LineKind.THIN)),
                new Fill(
                        List.of(
                                to,
                                neck.towards(way + Math.PI / 2, scale.real(0.035)),
                                neck.towards(way - Math.PI / 2, scale.real(0.035))),
                        look));
    }

    private void arrow(Point from, double way, String words, double wordsWay) {
        Point to = from.towards(way, scale.real(ARROW_IN));
        marks.addAll(shaft(from, to));
        if (!words.isEmpty()) label(to, words, wordsWay);
    }

    private void label(Point at, String words, double way) {
        marks.addAll(labels.beside(at, words, way, Look.note()));
    }

    /** What the footing gives back: a lift, a push and a moment. */
    private void base(Point foot) {
        double half = scale.real(0.4);
        marks.add(Stroke.line(foot.plus(-half, 0), foot.plus(half, 0), Look.visible(Layer.GROUND)));
        for (int i = 0; i < 5; i++)
            marks.add(Stroke.line(
                    foot.plus(-half + i * half / 2, 0),
                    foot.plus(-half + i * half / 2 - scale.real(0.08), -scale.real(0.1)),
                    Look.thin(Layer.GROUND)));
        labels.keepFree(Box.of(foot.plus(-half, -scale.real(0.1)), foot.plus(half, 0)));
        double moment = forces.hingePost().momentAlong().poundInches();
        label(
                foot.plus(0, -scale.real(0.1)),
                "M " + gate.units().moment(Math.abs(moment)) + ", "
                        + (moment >= 0 ? "leans to the latch" : "leans from the latch"),
                -Math.PI / 2);
    }

    private void dimensions() {
        if (leaf.pins().size() < 2) return;
        double low = leaf.pins().get(0).z().inches();
        double high = leaf.pins().get(leaf.pins().size() - 1).z().inches();
        double side = gate.outside().rightward();
        double x = gate.outside().at(postR(), 0).x() - side * scale.real(0.75);
        LinearDimension apart = LinearDimension.upright(
                gate.outside().at(postR(), low), gate.outside().at(postR(), high), x, gate.length(high - low));
        marks.add(apart);
        double cog = leaf.weight().centreOfGravity().r().inches();
        double foot = Math.min(0, leaf.outline().corners().get(0).z().inches()) - scale.real(0.75);
        for (double r : new double[] {0, cog}) {
            Point above = gate.outside().at(r, 0);
            labels.keepFreeLine(above, new Point(above.x(), foot));
        }
        marks.add(LinearDimension.level(
                gate.outside().at(side > 0 ? 0 : cog, 0),
                gate.outside().at(side > 0 ? cog : 0, 0),
                foot,
                gate.length(cog)));
    }

    private String pounds(String letter, double pounds) {
        return letter + " " + gate.units().force(pounds);
    }
}
