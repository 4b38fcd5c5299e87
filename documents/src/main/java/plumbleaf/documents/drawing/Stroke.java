package plumbleaf.documents.drawing;

import java.util.List;
import java.util.function.Function;

/** A line through points, closed or open. */
public record Stroke(List<Point> points, boolean closed, Look look) implements Primitive {
    public Stroke {
        points = List.copyOf(points);
        if (points.size() < 2) throw new IllegalArgumentException("A line needs two points, had " + points.size());
    }

    public static Stroke line(Point from, Point to, Look look) {
        return new Stroke(List.of(from, to), false, look);
    }

    public static Stroke through(List<Point> points, Look look) {
        return new Stroke(points, false, look);
    }

    public static Stroke outline(List<Point> points, Look look) {
        return new Stroke(points, true, look);
    }

    public static Stroke box(Box box, Look look) {
        return new Stroke(box.corners(), true, look);
    }

    @Override
    public Stroke placed(double factor, double dx, double dy) {
        return new Stroke(moved(points, factor, dx, dy), closed, look);
    }

    static List<Point> moved(List<Point> points, double factor, double dx, double dy) {
        return points.stream()
                .map(point -> new Point(point.x() * factor + dx, point.y() * factor + dy))
                .toList();
    }

    @Override
    public Box extents(Scale scale) {
        return Box.around(points);
    }

    @Override
    public <T> T match(
            Function<Stroke, T> stroke,
            Function<Arc, T> arc,
            Function<Fill, T> fill,
            Function<Dots, T> dots,
            Function<Text, T> text,
            Function<Raster, T> raster) {
        return stroke.apply(this);
    }
}
