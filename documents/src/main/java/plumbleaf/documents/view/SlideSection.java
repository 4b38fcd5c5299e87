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
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.section.Section;

/** A section across a slide leaf at its front rollers, looking towards the receiver's side with outside on the right: post, bracket, both tubes and their wheels. */
public final class SlideSection {
    private static final double BELOW_GRADE_IN = 8;
    private static final double GROUND_IN = 14;

    private SlideSection() {}

    public static Drawing of(SlideSubject subject, Scale scale) {
        List<Mark> marks = new ArrayList<>();
        List<Place> corners = subject.plan().leaf().outline().corners();
        double low = corners.get(1).z().inches();
        double high = corners.get(2).z().inches();
        double across = subject.plan().shape().across().inches();
        Section tube = subject.parts().frame();
        double grade = subject.gradeZ(subject.front());
        double half = subject.parts().hingePost().width().inches() / 2;
        Look post = Look.visible(Layer.POSTS).of(subject.front().id());
        marks.add(Area.edged(
                Box.of(new Point(-half, grade - BELOW_GRADE_IN), new Point(half, subject.topZ(subject.front())))
                        .corners(),
                Material.STEEL_FACE,
                post));
        for (double z : List.of(low, high - tube.depth().inches())) tube(marks, subject, tube, across, z);
        wheels(marks, subject, tube, across, low, high);
        double face = Math.signum(across) * half;
        for (double z :
                List.of(low + tube.depth().inches() / 2, high - tube.depth().inches() / 2))
            marks.add(Stroke.line(
                    new Point(face, z),
                    new Point(across - Math.signum(across) * tube.width().inches() / 2, z),
                    Look.thin(Layer.HARDWARE).of(subject.gate())));
        marks.addAll(GroundLine.along(
                List.of(
                        new Point(Math.min(across, 0) - GROUND_IN, grade),
                        new Point(Math.max(across, 0) + GROUND_IN, grade)),
                scale.real(0.16)));
        DimensionRows rows =
                new DimensionRows(DimensionRows.Side.BELOW, grade - BELOW_GRADE_IN - scale.real(0.25), scale);
        double foot = grade - BELOW_GRADE_IN;
        rows.add(
                new Point(Math.min(0, across), foot),
                new Point(Math.max(0, across), foot),
                subject.length(Math.abs(across)),
                subject.gate());
        marks.addAll(rows.marks());
        double side = Math.min(0, across) - tube.width().inches() - scale.real(0.45);
        marks.addAll(new DimensionRows(DimensionRows.Side.LEFT, side, scale)
                .add(new Point(across, low), new Point(across, high), subject.length(high - low), subject.gate())
                .add(new Point(across, grade), new Point(across, low), subject.length(low - grade), subject.gate())
                .marks());
        marks.add(Text.small(
                        new Point((across + half) / 2, subject.topZ(subject.front()) + scale.real(0.18)),
                        "inside  |  outside")
                .centred()
                .with(Look.note()));
        return Drawing.of("Section at the front rollers of " + subject.gate(), scale, marks);
    }

    private static void tube(List<Mark> marks, SlideSubject subject, Section tube, double across, double z) {
        double wide = tube.width().inches() / 2;
        double deep = tube.depth().inches();
        Look look = Look.visible(Layer.MEMBERS).of(subject.plan().leaf().id());
        if (tube.isRound()) {
            marks.add(Arc.circle(new Point(across, z + deep / 2), deep / 2, look));
            marks.add(Arc.circle(
                    new Point(across, z + deep / 2),
                    deep / 2 - tube.nominalWall().inches(),
                    look));
            return;
        }
        double wall = tube.nominalWall().inches();
        marks.add(Stroke.box(Box.of(new Point(across - wide, z), new Point(across + wide, z + deep)), look));
        marks.add(Stroke.box(
                Box.of(new Point(across - wide + wall, z + wall), new Point(across + wide - wall, z + deep - wall)),
                look));
    }

    /** Seen on edge: as wide as the tube, and beside it as deep. */
    private static void wheels(
            List<Mark> marks, SlideSubject subject, Section tube, double across, double low, double high) {
        double wide = tube.width().inches() / 2;
        double deep = tube.depth().inches();
        double wheel = deep * 1.2;
        RollerWay way = subject.plan().rollers().way();
        Look look = Look.visible(Layer.HARDWARE).of(subject.gate());
        if (way == RollerWay.GROOVED) {
            box(marks, across - wide, low - wheel, across + wide, low, look);
            box(marks, across - wide, high, across + wide, high + wheel, look);
            return;
        }
        double runs = way == RollerWay.TOP ? high - deep : low;
        double guided = way == RollerWay.TOP ? low : high - deep;
        box(marks, across - wide, runs - wheel, across + wide, runs, look);
        box(marks, across - wide, runs + deep, across + wide, runs + deep + wheel, look);
        for (double z : List.of(runs, guided)) {
            box(marks, across - wide - deep * 0.5, z + deep * 0.2, across - wide, z + deep * 0.8, look);
            box(marks, across + wide, z + deep * 0.2, across + wide + deep * 0.5, z + deep * 0.8, look);
        }
    }

    private static void box(List<Mark> marks, double fromX, double fromZ, double toX, double toZ, Look look) {
        marks.add(Stroke.box(Box.of(new Point(fromX, fromZ), new Point(toX, toZ)), look));
    }
}
