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
import plumbleaf.engine.job.SlideSpec;
import plumbleaf.engine.section.Section;

/** Where the nose of a slide leaf ends: its lower tube in the mouth of the receiver, from outside and from above. */
public final class SlideReceiver {
    /** Of tube and post that much is shown, in widths of the tube. */
    private static final double SHOWN_WIDTHS = 3.5;

    /** The mouth reaches so far before the nose, and its back stands so far behind it: a drawing's, the receiver's maker says his own. */
    private static final double BEFORE_IN = 2;

    private static final double BEHIND_IN = 1;

    private final SlideSubject subject;
    private final Scale scale;
    private final Section tube;
    private final SlideSpec spec;
    private final double opening;
    private final double nose;
    private final double across;
    private final double post;
    private final List<Mark> marks = new ArrayList<>();

    private SlideReceiver(SlideSubject subject, Scale scale) {
        this.subject = subject;
        this.scale = scale;
        this.tube = subject.parts().frame();
        this.spec = subject.plan().kind().spec();
        this.opening = subject.plan().shape().opening().inches();
        this.nose = subject.plan().shape().nose().inches();
        this.across = subject.plan().shape().across().inches();
        this.post = subject.receiver().width().inches();
    }

    public static Drawing fromOutside(SlideSubject subject, Scale scale) {
        SlideReceiver drawn = new SlideReceiver(subject, scale);
        drawn.outside();
        return Drawing.of("Receiver of " + subject.gate() + " from outside", scale, drawn.marks);
    }

    public static Drawing fromAbove(SlideSubject subject, Scale scale) {
        SlideReceiver drawn = new SlideReceiver(subject, scale);
        drawn.above();
        return Drawing.of("Receiver of " + subject.gate() + " from above", scale, drawn.marks);
    }

    private Point at(double rIn, double upIn) {
        return new Point(subject.x(rIn), upIn);
    }

    private void outside() {
        double deep = tube.depth().inches();
        double up = spec.mouthUp().inches();
        double reach = deep * SHOWN_WIDTHS;
        double high = deep * 1.5;
        // Behind its posts the leaf is hidden by the post; before them it hides the post.
        boolean behind = across < 0;
        Runnable post = () -> box(
                opening,
                -high,
                opening + this.post,
                deep + high,
                Layer.POSTS,
                subject.receiver().id());
        if (!behind) post.run();
        leaf(opening - reach, 0, deep);
        if (behind) post.run();
        mouth(-up, deep + up);
        DimensionRows side = new DimensionRows(
                subject.x(1) > 0 ? DimensionRows.Side.RIGHT : DimensionRows.Side.LEFT,
                subject.x(Math.max(opening + this.post, nose + BEHIND_IN) + scale.real(0.35)),
                scale);
        side.add(at(nose, deep), at(nose, deep + up), subject.length(up), subject.gate());
        side.add(at(nose, -up), at(nose, 0), subject.length(up), subject.gate());
        marks.addAll(side.marks());
        overlap(-high);
        mark(opening - reach / 2, deep / 2, "lower tube");
        mark(
                opening + this.post / 2,
                -high - scale.real(0.75),
                "post " + subject.receiver().id());
    }

    private void above() {
        double wide = tube.width().inches();
        double aside = spec.mouthAcross().inches();
        double reach = wide * SHOWN_WIDTHS;
        // Drawn with outside below: what lies behind the posts lies above them.
        double middle = -across;
        box(
                opening,
                -post / 2,
                opening + post,
                post / 2,
                Layer.POSTS,
                subject.receiver().id());
        leaf(opening - reach, middle - wide / 2, middle + wide / 2);
        double toPost = subject.mouthToPostIn();
        double low = middle - wide / 2 - (middle > 0 ? toPost : aside);
        double high = middle + wide / 2 + (middle > 0 ? aside : toPost);
        mouth(low, high);
        double near = middle > 0 ? low : high;
        double face = middle > 0 ? post / 2 : -post / 2;
        if (Math.abs(near - face) > 0.1)
            for (double r : List.of(opening + post * 0.25, opening + post * 0.75))
                marks.add(Stroke.line(
                        at(r, face), at(r, near), Look.visible(Layer.HARDWARE).of(subject.gate())));
        DimensionRows side = new DimensionRows(
                subject.x(1) > 0 ? DimensionRows.Side.RIGHT : DimensionRows.Side.LEFT,
                subject.x(Math.max(opening + post, nose + BEHIND_IN) + scale.real(0.35)),
                scale);
        side.add(at(nose, middle + wide / 2), at(nose, high), subject.length(high - middle - wide / 2), subject.gate());
        side.add(at(nose, low), at(nose, middle - wide / 2), subject.length(middle - wide / 2 - low), subject.gate());
        side.add(at(opening + post, 0), at(nose, middle), subject.length(Math.abs(across)), subject.gate());
        marks.addAll(side.marks());
        overlap(Math.min(-post / 2, low));
    }

    private void overlap(double foot) {
        marks.addAll(new DimensionRows(DimensionRows.Side.BELOW, foot - scale.real(0.25), scale)
                .add(
                        at(Math.min(opening, nose), foot),
                        at(Math.max(opening, nose), foot),
                        subject.length(Math.abs(nose - opening)) + " in it",
                        subject.gate())
                .marks());
    }

    private void leaf(double from, double low, double high) {
        box(from, low, nose, high, Layer.MEMBERS, subject.plan().leaf().id());
        Look broken = Look.hidden(Layer.MEMBERS).of(subject.plan().leaf().id());
        marks.add(Stroke.line(at(from - scale.real(0.08), low), at(from - scale.real(0.08), high), broken));
    }

    private void mouth(double low, double high) {
        marks.add(Stroke.through(
                List.of(
                        at(nose - BEFORE_IN, low),
                        at(nose + BEHIND_IN, low),
                        at(nose + BEHIND_IN, high),
                        at(nose - BEFORE_IN, high)),
                Look.visible(Layer.HARDWARE).of(subject.gate())));
    }

    private void box(double fromR, double low, double toR, double high, Layer layer, String of) {
        Point one = at(fromR, low);
        Point other = at(toR, high);
        marks.add(Area.edged(
                new Box(Math.min(one.x(), other.x()), low, Math.max(one.x(), other.x()), high).corners(),
                Material.STEEL_FACE,
                Look.visible(layer).of(of)));
    }

    private void mark(double rIn, double upIn, String words) {
        marks.add(Text.small(at(rIn, upIn), words)
                .centred()
                .clearing()
                .with(Look.note().of(subject.gate())));
    }
}
