package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;

/** A saw angle at full size on stock of its real width: lay the bevel gauge on it, or the piece. One for each setting of the saw. */
public final class BevelTemplate {
    /** Two angles nearer than this are one setting of the saw. */
    private static final double SETTING_DEG = 0.5;

    /** Nearer to square than this, a saw's own scale is better than any paper. */
    private static final double LEAST_DEG = 2;

    private static final double BODY_IN = 2.3;
    /** How wide one is with its words, at least. */
    private static final double WIDE_IN = 4.4;

    private BevelTemplate() {}

    /** An end to be sawn: the angle from square, the stock's width on the saw, whose end it is. */
    public record End(Angle fromSquare, double stockIn, String of) {}

    /** One template for each setting other than square, steepest first, with all it is for. */
    public static List<Drawing> of(List<End> ends) {
        Map<String, List<End>> settings = new LinkedHashMap<>();
        List<End> steepFirst = new ArrayList<>(ends);
        steepFirst.sort(Comparator.comparingDouble((End end) -> -setting(end)).thenComparingDouble(End::stockIn));
        for (End end : steepFirst)
            if (setting(end) >= LEAST_DEG)
                settings.computeIfAbsent(
                                DecimalText.fixed(setting(end), 1) + " " + DecimalText.fixed(end.stockIn(), 3),
                                key -> new ArrayList<>())
                        .add(end);
        return settings.values().stream().map(BevelTemplate::drawn).toList();
    }

    private static double setting(End end) {
        return Math.round(Math.abs(end.fromSquare().inDegrees()) / SETTING_DEG) * SETTING_DEG;
    }

    private static Drawing drawn(List<End> same) {
        double degrees = setting(same.get(0));
        double wide = same.get(0).stockIn();
        double slant = wide * StrictMath.tan(Math.toRadians(degrees));
        double body = Math.max(1.7, BODY_IN - Math.max(0, wide - 2));
        List<Mark> marks = new ArrayList<>();
        Look face = Look.visible(Layer.MEMBERS);
        // The long point is at the foot, the square line through the short one.
        marks.add(Stroke.through(
                List.of(
                        new Point(body + slant, wide),
                        new Point(slant, wide),
                        new Point(0, 0),
                        new Point(body + slant, 0)),
                face));
        marks.add(Stroke.line(new Point(slant, -0.1), new Point(slant, wide + 0.1), Look.hidden(Layer.MEMBERS)));
        double radius = Math.min(wide * 0.72, 1.6);
        Point corner = new Point(slant, wide);
        double down = -Math.PI / 2;
        marks.add(Arc.between(
                corner,
                radius,
                down,
                down - Math.toRadians(degrees),
                Look.dimension().as(LineKind.THIN)));
        double left = slant + 0.2;
        marks.add(Text.medium(new Point(left, wide - 0.25), DecimalText.fixed(degrees, 1) + "\u00b0 from square")
                .bold()
                .with(Look.note()));
        double y = wide - 0.45;
        for (String line : whose(same, body)) {
            marks.add(Text.small(new Point(left, y), line).with(Look.note()));
            y -= 0.16;
        }
        double foot = Math.min(-0.3, y - 0.02);
        marks.add(Text.small(new Point(0.02, foot), "long point").with(Look.note()));
        marks.add(Stroke.line(new Point(0.08, foot + 0.11), new Point(0.01, -0.02), Look.dimension()));
        return Drawing.of("Bevel", Scale.FULL, marks)
                .framed(new Box(-0.1, foot - 0.1, Math.max(WIDE_IN, body + slant) + 0.1, wide + 0.2));
    }

    private static List<String> whose(List<End> same, double body) {
        List<String> names = same.stream().map(End::of).distinct().toList();
        List<String> lines =
                Lettering.wrapped("marks: " + String.join(", ", names), body - 0.2, Text.SMALL, Text.Weight.REGULAR);
        if (lines.size() <= 3) return lines;
        return List.of(lines.get(0), lines.get(1), "of " + names.size() + " ends in all");
    }
}
