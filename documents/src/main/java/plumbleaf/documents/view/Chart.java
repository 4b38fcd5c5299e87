package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;

/** Axes for a curve, in inches on paper: values are placed by share, so the drawing's scale is full size. */
final class Chart {
    private final double wide;
    private final double high;
    private final double fromX;
    private final double toX;
    private final double fromY;
    private final double toY;
    private final List<Mark> marks = new ArrayList<>();

    Chart(double wide, double high, double fromX, double toX, double fromY, double toY) {
        this.wide = wide;
        this.high = high;
        this.fromX = fromX;
        this.toX = toX;
        this.fromY = fromY;
        this.toY = toY;
    }

    Point at(double x, double y) {
        return new Point((x - fromX) / (toX - fromX) * wide, (y - fromY) / (toY - fromY) * high);
    }

    void curve(List<Point> values, Look look) {
        marks.add(Stroke.through(
                values.stream().map(value -> at(value.x(), value.y())).toList(), look));
    }

    void tickX(double x, String text) {
        Point foot = at(x, fromY);
        marks.add(Stroke.line(foot, foot.plus(0, high), hair()));
        marks.add(Text.small(foot.plus(0, -0.07), text).anchored(Text.Across.MIDDLE, Text.Up.TOP));
    }

    void tickY(double y, String text) {
        Point foot = at(fromX, y);
        marks.add(Stroke.line(foot, foot.plus(wide, 0), hair()));
        marks.add(Text.small(foot.plus(-0.07, 0), text).anchored(Text.Across.END, Text.Up.MIDDLE));
    }

    void limitY(double y, Look look) {
        marks.add(Stroke.line(at(fromX, y), at(toX, y), look));
    }

    void titles(String xTitle, String yTitle) {
        marks.add(Text.small(new Point(wide / 2, -0.36), xTitle)
                .anchored(Text.Across.MIDDLE, Text.Up.MIDDLE)
                .with(Look.note().in(Ink.SECOND)));
        marks.add(Text.small(new Point(0, high + 0.16), yTitle).with(Look.note().in(Ink.SECOND)));
    }

    void add(Mark mark) {
        marks.add(mark);
    }

    List<Mark> marks() {
        return List.copyOf(marks);
    }

    private static Look hair() {
        return new Look(Layer.CHART, LineKind.DIMENSION, Ink.HAIR, "");
    }
}
