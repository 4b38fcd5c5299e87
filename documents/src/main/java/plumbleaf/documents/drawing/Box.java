package plumbleaf.documents.drawing;

import java.util.List;

/** An upright rectangle, in inches. */
public record Box(double minX, double minY, double maxX, double maxY) {
    /** Holds nothing; the start of a union. */
    public static final Box NOTHING = new Box(1e9, 1e9, -1e9, -1e9);

    public static Box of(Point one, Point other) {
        return new Box(
                Math.min(one.x(), other.x()),
                Math.min(one.y(), other.y()),
                Math.max(one.x(), other.x()),
                Math.max(one.y(), other.y()));
    }

    public static Box around(List<Point> points) {
        Box box = NOTHING;
        for (Point point : points) box = box.with(point);
        return box;
    }

    public boolean isNothing() {
        return minX > maxX || minY > maxY;
    }

    public double width() {
        return maxX - minX;
    }

    public double height() {
        return maxY - minY;
    }

    public Point centre() {
        return new Point((minX + maxX) / 2, (minY + maxY) / 2);
    }

    public Box with(Point point) {
        return new Box(
                Math.min(minX, point.x()),
                Math.min(minY, point.y()),
                Math.max(maxX, point.x()),
                Math.max(maxY, point.y()));
    }

    public Box with(Box other) {
        return new Box(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    public Box grown(double by) {
        return new Box(minX - by, minY - by, maxX + by, maxY + by);
    }

    /** Whether the insides share anything; touching edges do not. */
    public boolean overlaps(Box other) {
        return minX < other.maxX && other.minX < maxX && minY < other.maxY && other.minY < maxY;
    }

    public boolean contains(Box other) {
        return minX <= other.minX && minY <= other.minY && maxX >= other.maxX && maxY >= other.maxY;
    }

    public List<Point> corners() {
        return List.of(new Point(minX, minY), new Point(maxX, minY), new Point(maxX, maxY), new Point(minX, maxY));
    }
}
