package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Balloon;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.JointTag;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.SectionMark;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.drawing.WeldMark;
import plumbleaf.engine.design.FrameWelds;
import plumbleaf.engine.gate.FrameJoint;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.gate.Weld;
import plumbleaf.engine.gate.WeldKind;

/** What a shop drawing calls out on a leaf's frame: corners, sections, joints, the welds of a corner, members, and where the weight acts. */
final class ShopMarks {
    private static final double WELD_STEP_IN = 0.12;

    private final GateSubject gate;
    private final Leaf leaf;
    private final Outside outside;
    private final Scale scale;
    private final List<Mark> marks = new ArrayList<>();

    ShopMarks(GateSubject gate, Scale scale) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.outside = gate.outside();
        this.scale = scale;
    }

    /** All of them, clear of what is drawn already. */
    List<Mark> around(List<Mark> drawn) {
        corners();
        List<SectionMark> sections = SectionPlaces.on(gate, scale, new Labels(scale).keepFreeText(both(drawn)));
        marks.addAll(sections);
        marks.addAll(JointTags.of(leaf, outside, scale, both(drawn)));
        welds(both(drawn));
        marks.addAll(MemberBalloons.of(leaf, outside, scale, both(drawn)));
        gravity(both(drawn));
        return List.copyOf(marks);
    }

    private List<Mark> both(List<Mark> drawn) {
        List<Mark> all = new ArrayList<>(drawn);
        all.addAll(marks);
        return all;
    }

    private void corners() {
        List<String> names = List.of("A", "B", "C", "D");
        List<Place> outer = leaf.outline().corners();
        for (int i = 0; i < 4; i++) {
            double inward = (i == 0 || i == 3 ? 1 : -1) * scale.real(0.20);
            double outward = (i < 2 ? -1 : 1) * scale.real(0.09);
            double rake = i < 2
                    ? leaf.outline().bottom().ratio()
                    : leaf.outline().top().ratio();
            Point at = outside.at(
                    outer.get(i).r().inches() + inward, outer.get(i).z().inches() + inward * rake + outward);
            marks.add(Text.small(at, names.get(i)).centred().bold().clearing().with(Look.note()));
        }
        Look thin = Look.dimension().as(LineKind.CENTRE).in(Ink.SECOND);
        marks.add(Stroke.line(outside.at(outer.get(0)), outside.at(outer.get(2)), thin));
        marks.add(Stroke.line(outside.at(outer.get(1)), outside.at(outer.get(3)), thin));
    }

    private void gravity(List<Mark> drawn) {
        Point at = outside.at(leaf.weight().centreOfGravity());
        double radius = scale.real(0.07);
        Look look = Look.thin(Layer.NOTES).of(leaf.id());
        marks.add(Arc.circle(at, radius, look));
        for (double turn : List.of(0.0, Math.PI)) {
            List<Point> quarter = new ArrayList<>();
            quarter.add(at);
            for (int i = 0; i <= 6; i++) quarter.add(at.towards(turn + i * Math.PI / 12, radius));
            marks.add(new Fill(quarter, look));
        }
        Labels labels =
                new Labels(scale).keepFreeText(drawn).keepFree(Box.of(at, at).grown(radius));
        for (Mark mark : List.copyOf(marks)) {
            if (mark instanceof Balloon balloon)
                labels.keepFree(Box.of(balloon.middle(), balloon.middle()).grown(scale.real(Balloon.RADIUS_IN)));
            if (mark instanceof JointTag tag)
                labels.keepFree(Box.of(tag.middle(), tag.middle()).grown(scale.real(JointTag.RADIUS_IN)));
        }
        String text = gate.units().weight(leaf.weight().wet().pounds());
        for (Mark label : labels.beside(at, text, -0.9, look))
            marks.add(label instanceof Text words ? words.clearing() : label);
    }

    /** The welds of the top latch corner, above the leaf where nothing lies behind them; the tail says which joints are made alike. */
    private void welds(List<Mark> drawn) {
        Point corner = outside.at(leaf.outline().corners().get(2));
        Labels labels = new Labels(scale).keepFreeText(drawn);
        FrameJoint joint = leaf.joints().stream()
                .min(Comparator.comparingDouble(is -> corner.distance(outside.at(is.at()))))
                .orElseThrow();
        Map<String, List<Weld>> kinds = new LinkedHashMap<>();
        for (Weld weld : leaf.welds())
            kinds.computeIfAbsent(weld.kind().words() + "|" + weld.where(), key -> new ArrayList<>())
                    .add(weld);
        double step = 0.3;
        for (List<Weld> same : kinds.values()) {
            if (same.stream().noneMatch(weld -> weld.joint().equals(joint.id()))) continue;
            WeldMark mark = weld(same, outside.at(joint.at()), step);
            while (!labels.isFree(mark) && step < 3) {
                step += WELD_STEP_IN;
                mark = weld(same, outside.at(joint.at()), step);
            }
            labels.keepFreeText(List.of(mark));
            marks.add(mark);
            step += 0.4;
        }
    }

    private WeldMark weld(List<Weld> same, Point at, double aboveIn) {
        Weld first = same.get(0);
        double top = Math.max(gate.hingePostTop().inches(), gate.latchPostTop().inches());
        for (Place place : leaf.outline().crestLine())
            top = Math.max(top, place.z().inches());
        String joints = JointNames.of(leaf.id(), same.stream().map(Weld::joint).toList());
        return new WeldMark(
                at,
                new Point(at.x() - outside.rightward() * scale.real(0.3), top + scale.real(aboveIn)),
                outside.rightward() < 0,
                switch (first.kind()) {
                    case GROOVE -> WeldMark.Kind.SQUARE;
                    case FILLET -> WeldMark.Kind.FILLET;
                    case FLARE_BEVEL -> WeldMark.Kind.FLARE_BEVEL;
                },
                first.runs() > 1 ? WeldMark.Sides.BOTH : WeldMark.Sides.ARROW,
                first.kind() == WeldKind.FILLET
                        ? Sizes.inches(
                                gate.units(),
                                FrameWelds.leg(gate.parts().frame()).inches())
                        : "",
                "",
                false,
                false,
                joints + (first.flush() ? ", flush" : ""),
                Look.note());
    }
}
