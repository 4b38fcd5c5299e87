package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A distance between two places, measured along a direction, its line through a third place.
 *
 * @param text     as the trade writes it, given by the caller
 * @param overflow where the lettering goes when it does not fit between the arrows
 */
public record LinearDimension(
        Point from, Point to, double directionRad, Point through, String text, Overflow overflow, Look look)
        implements Mark {
    private static final double GAP_IN = 0.06;
    private static final double BEYOND_IN = 0.09;
    private static final double TEXT_OFF_IN = 0.045;
    private static final double TAIL_IN = 0.20;

    /** Which end lettering is put beside when there is no room within. */
    public enum Overflow {
        BEFORE,
        AFTER
    }

    public static LinearDimension level(Point from, Point to, double lineY, String text) {
        return new LinearDimension(from, to, 0, new Point(from.x(), lineY), text, Overflow.AFTER, Look.dimension());
    }

    public static LinearDimension upright(Point from, Point to, double lineX, String text) {
        return new LinearDimension(
                from, to, Math.PI / 2, new Point(lineX, from.y()), text, Overflow.AFTER, Look.dimension());
    }

    /** Along the line between the places, set off to the left of it by so much on paper. */
    public static LinearDimension along(Point from, Point to, double offPaperIn, String text, Scale scale) {
        double direction = from.direction(to);
        Point through = from.towards(direction + Math.PI / 2, scale.real(offPaperIn));
        return new LinearDimension(from, to, direction, through, text, Overflow.AFTER, Look.dimension());
    }

    public LinearDimension of(String id) {
        return new LinearDimension(from, to, directionRad, through, text, overflow, look.of(id));
    }

    public LinearDimension overflowing(Overflow side) {
        return new LinearDimension(from, to, directionRad, through, text, side, look);
    }

    /** Whether lettering and both arrows fit between the extension lines. */
    public static boolean fits(String text, double spanPaperIn) {
        return Lettering.width(text, Text.SMALL, Text.Weight.REGULAR) + 2 * Arrow.LONG_IN + 0.04 <= spanPaperIn;
    }

    private Point onLine(Point place) {
        double along = (place.x() - through.x()) * StrictMath.cos(directionRad)
                + (place.y() - through.y()) * StrictMath.sin(directionRad);
        return through.towards(directionRad, along);
    }

    @Override
    public List<Primitive> drawn(Scale scale) {
        List<Primitive> marks = new ArrayList<>();
        Point first = onLine(from);
        Point last = onLine(to);
        extension(marks, from, first, scale);
        extension(marks, to, last, scale);
        double way = first.distance(last) < 1e-9 ? directionRad : first.direction(last);
        double span = scale.paper(first.distance(last));
        double reading = readable(directionRad);
        double wide = Lettering.width(text, Text.SMALL, Text.Weight.REGULAR);
        Text lettering = Text.small(first, text).turned(reading).with(look).clearing();
        double off = scale.real(TEXT_OFF_IN);
        if (fits(text, span)) {
            marks.add(Stroke.line(first, last, look));
            marks.add(Arrow.tip(first, way + Math.PI, scale, look));
            marks.add(Arrow.tip(last, way, scale, look));
            Point middle = first.middle(last).towards(reading + Math.PI / 2, off);
            marks.add(moved(lettering, middle, Text.Across.MIDDLE));
            return List.copyOf(marks);
        }
        double tail = scale.real(TAIL_IN);
        boolean within = wide + 0.05 <= span;
        double shelf = within ? 0 : scale.real(wide + 0.06);
        boolean after = overflow == Overflow.AFTER;
        marks.add(Stroke.line(first.towards(way + Math.PI, tail + (after ? 0 : shelf)), first, look));
        marks.add(Stroke.line(last, last.towards(way, tail + (after ? shelf : 0)), look));
        marks.add(Stroke.line(first, last, look));
        marks.add(Arrow.tip(first, way, scale, look));
        marks.add(Arrow.tip(last, way + Math.PI, scale, look));
        Point middle = within
                ? first.middle(last)
                : after ? last.towards(way, tail + shelf / 2) : first.towards(way + Math.PI, tail + shelf / 2);
        marks.add(moved(lettering, middle.towards(reading + Math.PI / 2, off), Text.Across.MIDDLE));
        return List.copyOf(marks);
    }

    private static Text moved(Text text, Point to, Text.Across across) {
        return new Text(
                to,
                text.text(),
                text.heightIn(),
                across,
                Text.Up.BASELINE,
                text.rotationRad(),
                text.weight(),
                text.clear(),
                text.look());
    }

    private void extension(List<Primitive> marks, Point place, Point onLine, Scale scale) {
        double length = place.distance(onLine);
        double gap = scale.real(GAP_IN);
        if (length <= gap) return;
        double way = place.direction(onLine);
        marks.add(Stroke.line(place.towards(way, gap), onLine.towards(way, scale.real(BEYOND_IN)), look));
    }

    /** Turned so that it is read from below or from the right. */
    static double readable(double directionRad) {
        double turn = directionRad;
        while (turn > Math.PI / 2 + 1e-6) turn -= Math.PI;
        while (turn <= -Math.PI / 2 + 1e-6) turn += Math.PI;
        return turn;
    }
}
