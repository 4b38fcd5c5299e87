package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
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
import plumbleaf.engine.gate.SlideShape;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.Offset;

/** A slide gate from above, outside below: the leaf closed beside its posts, the strip of ground it needs until it stands open, and how far it clears the ground there. */
public final class SlideWay {
    private SlideWay() {}

    public static Drawing of(SlideSubject subject, Scale scale) {
        List<Mark> marks = new ArrayList<>();
        SlideShape shape = subject.plan().shape();
        double half = subject.parts().frame().width().inches() / 2;
        double middle = -shape.across().inches();
        marks.add(Area.edged(
                strip(subject, shape.openEnd(), shape.nose(), middle, half),
                Material.SHADE,
                Look.hidden(Layer.SWING).of(subject.gate())));
        marks.add(Area.edged(
                strip(subject, shape.tailEnd(), shape.nose(), middle, half),
                Material.STEEL_FACE,
                Look.visible(Layer.GATE).of(subject.plan().leaf().id())));
        List<Post> posts = new ArrayList<>(List.of(subject.front(), subject.receiver()));
        subject.rear().ifPresent(posts::add);
        for (Post post : posts) {
            double r = subject.at(post);
            double size = post.width().inches() / 2;
            marks.add(Area.edged(
                    Box.of(new Point(subject.x(r) - size, -size), new Point(subject.x(r) + size, size))
                            .corners(),
                    Material.STEEL,
                    Look.visible(Layer.POSTS).of(post.id())));
            marks.add(Text.small(new Point(subject.x(r), -size - scale.real(0.16)), post.id())
                    .centred()
                    .bold()
                    .with(Look.note().of(post.id())));
        }
        marks.add(Stroke.line(
                new Point(subject.x(shape.openEnd().inches()), 0),
                new Point(subject.x(0), 0),
                Look.centre(Layer.FENCE)));
        double above = Math.max(middle + half, half) + scale.real(0.3);
        DimensionRows rows = new DimensionRows(DimensionRows.Side.ABOVE, above, scale);
        add(rows, subject, shape.openEnd().inches(), shape.tailEnd().inches(), above, " travel");
        add(rows, subject, shape.openEnd().inches(), 0, above, " to keep clear");
        marks.addAll(rows.marks());
        marks.add(Text.small(
                        new Point(
                                subject.x(shape.tailEnd().inches() / 2),
                                Math.min(middle - half, -half) - scale.real(0.34)),
                        "posts' line to middle of leaf " + subject.length(Math.abs(middle)) + "; clears by "
                                + subject.length(
                                        subject.plan().travel().running().inches()) + " at the least, "
                                + subject.length(
                                        subject.plan().travel().at().size().inches())
                                + (subject.plan().travel().at().inches() < 0 ? " behind" : " past")
                                + " the face of " + subject.front().id())
                .centred()
                .with(Look.note().of(subject.gate())));
        return Drawing.of("Way of gate " + subject.gate() + ", from above", scale, marks);
    }

    private static List<Point> strip(SlideSubject subject, Offset from, Offset to, double middle, double half) {
        return Box.of(
                        new Point(subject.x(from.inches()), middle - half),
                        new Point(subject.x(to.inches()), middle + half))
                .corners();
    }

    private static void add(DimensionRows rows, SlideSubject subject, double from, double to, double y, String words) {
        rows.add(
                new Point(subject.x(from), y),
                new Point(subject.x(to), y),
                subject.length(Math.abs(to - from)) + words,
                subject.gate());
    }
}
