package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.gate.Cope;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.quantity.DecimalText;

/** The saddle of a round tube unrolled at full size: wrapped round the tube it closes on the girth of its real outside diameter. */
public final class WrapTemplate {
    private static final double BELOW_IN = 1.1;
    /** A quarter of a turn in steps of the cope's own template. */
    private static final int QUARTER = 6;

    private WrapTemplate() {}

    public static List<Drawing> of(GateSubject gate) {
        List<Drawing> wraps = new ArrayList<>();
        for (Member member : gate.leaf().members())
            for (Cope cope : Cope.of(member)) wraps.add(drawn(gate, member, cope));
        return List.copyOf(wraps);
    }

    private static Drawing drawn(GateSubject gate, Member member, Cope cope) {
        List<Point> curve = cope.template().stream()
                .map(point -> new Point(point.around().inches(), -point.back().inches()))
                .toList();
        double girth = curve.get(curve.size() - 1).x();
        double foot = -cope.depth().inches() - BELOW_IN;
        List<Mark> marks = new ArrayList<>();
        Look cut = Look.visible(Layer.MEMBERS).of(member.id());
        marks.add(Stroke.through(curve, cut));
        marks.add(Stroke.through(
                List.of(curve.get(0), new Point(0, foot), new Point(girth, foot), curve.get(curve.size() - 1)),
                cut.as(LineKind.THIN)));
        marks.add(Stroke.line(new Point(0, 0), new Point(girth, 0), Look.hidden(Layer.MEMBERS)));
        for (int i = QUARTER; i + 1 < curve.size(); i += QUARTER)
            marks.add(Stroke.line(curve.get(i), new Point(curve.get(i).x(), foot), Look.centre(Layer.MEMBERS)));
        double y = foot + 0.42;
        marks.add(Text.small(
                        new Point(0.08, y),
                        gate.leaf().id() + " mark "
                                + member.id().substring(member.id().lastIndexOf('.') + 2) + ", "
                                + (cope.end() == 0 ? "first" : "last") + " end, "
                                + DecimalText.fixed(cope.fromSquare().inDegrees(), 1) + "\u00b0 from square")
                .bold()
                .clearing()
                .with(Look.note()));
        marks.add(Text.small(
                        new Point(0.08, y - 0.18),
                        "Both short edges meet on the side of the sharp corner; dashed: tips of the ears.")
                .clearing()
                .with(Look.note()));
        marks.add(Text.small(
                        new Point(0.08, y - 0.34),
                        "Closes round " + gate.length(member.section().depth().inches()) + " outside: "
                                + gate.length(girth) + " long. If it does not, measure the tube.")
                .clearing()
                .with(Look.note()));
        return Drawing.of("Wrap", Scale.FULL, marks).framed(new Box(-0.1, foot - 0.1, girth + 0.1, 0.15));
    }
}
