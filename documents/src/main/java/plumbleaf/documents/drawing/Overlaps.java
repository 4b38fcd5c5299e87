package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** Looks for what is wrong with the lettering of a drawing: labels over one another, or beyond its frame. Found by separating axes. */
public final class Overlaps {
    private static final double TOUCH_IN = 0.02;

    private Overlaps() {}

    public static List<String> of(Drawing drawing) {
        List<Text> texts = new ArrayList<>();
        for (Primitive part : drawing.primitives())
            if (part instanceof Text text && !text.text().isBlank()) texts.add(text);
        List<String> found = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            Text one = texts.get(i);
            if (!drawing.frame().grown(1e-6).contains(one.extents(drawing.scale())))
                found.add("beyond the frame: " + one.text());
            for (Text other : texts.subList(i + 1, texts.size()))
                if (touch(drawing, one, other)) found.add(one.text() + " over " + other.text());
        }
        return found;
    }

    private static boolean touch(Drawing drawing, Text one, Text other) {
        Box first = one.extents(drawing.scale());
        if (!first.overlaps(other.extents(drawing.scale()))) return false;
        List<Point> a = one.corners(drawing.scale());
        List<Point> b = other.corners(drawing.scale());
        double slack = drawing.scale().real(TOUCH_IN);
        for (double axis : new double[] {
            one.rotationRad(), one.rotationRad() + Math.PI / 2, other.rotationRad(), other.rotationRad() + Math.PI / 2
        }) if (apart(a, b, axis, slack)) return false;
        return true;
    }

    private static boolean apart(List<Point> a, List<Point> b, double axisRad, double slack) {
        return most(a, axisRad) - slack < least(b, axisRad) || most(b, axisRad) - slack < least(a, axisRad);
    }

    private static double most(List<Point> points, double axisRad) {
        return points.stream().mapToDouble(point -> along(point, axisRad)).max().orElse(0);
    }

    private static double least(List<Point> points, double axisRad) {
        return points.stream().mapToDouble(point -> along(point, axisRad)).min().orElse(0);
    }

    private static double along(Point point, double axisRad) {
        return point.x() * StrictMath.cos(axisRad) + point.y() * StrictMath.sin(axisRad);
    }
}
