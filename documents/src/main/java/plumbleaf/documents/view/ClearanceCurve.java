package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.gate.Clearance;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;

/** Least room under the leaf at every angle, with the ground as a line at nothing. Drawn on paper, not in real inches. */
public final class ClearanceCurve {
    private static final double HIGH_IN = 2.0;
    /** So high over the foot of the chart its least has room under the curve, which nowhere runs there. */
    private static final double UNDER_IN = 0.3;

    private static final double[] INCHES = {0.25, 0.5, 1, 2, 4, 6, 12, 24};
    private static final double[] MILLIMETRES = {5, 10, 20, 50, 100, 200, 500};

    private ClearanceCurve() {}

    public static Drawing of(String gate, Swing swing, double wideIn, DisplayUnits units) {
        List<Point> values = new ArrayList<>();
        for (Clearance each : swing.curve())
            values.add(new Point(each.atAngle().inDegrees(), each.clear().inches()));
        double most = values.stream().mapToDouble(Point::y).max().orElse(1);
        double least = values.stream().mapToDouble(Point::y).min().orElse(0);
        double step = stepFor(Math.max(most, 0) - Math.min(least, 0), units);
        double from = Math.min(0, Math.floor(least / step) * step);
        double to = Math.max(2 * step, Math.ceil(most / step + 0.5) * step);
        double end = values.stream().mapToDouble(Point::x).max().orElse(90);
        Chart chart = new Chart(wideIn, HIGH_IN, 0, end, from, to);
        for (double y = from; y <= to + 1e-9; y += step) chart.tickY(y, units.length(y));
        for (double x = 0; x <= end + 1e-9; x += end > 90 ? 30 : 15) chart.tickX(x, DecimalText.upTo(x, 0) + "\u00b0");
        chart.limitY(0, new Look(Layer.CHART, LineKind.VISIBLE, Ink.INK, ""));
        if (values.size() > 1) chart.curve(values, new Look(Layer.CHART, LineKind.VISIBLE, Ink.CHALK, gate));
        Point low = chart.at(
                swing.least().atAngle().inDegrees(), swing.least().clear().inches());
        chart.add(Fill.of(
                List.of(low.plus(0.05, 0), low.plus(0, 0.05), low.plus(-0.05, 0), low.plus(0, -0.05)),
                Layer.CHART,
                Ink.INK));
        boolean right = low.x() > wideIn * 0.6;
        chart.add(Text.small(
                        low.plus(right ? -0.1 : 0.1, low.y() > UNDER_IN ? -0.18 : 0.1),
                        "least " + units.length(swing.least().clear()))
                .anchored(right ? Text.Across.END : Text.Across.START, Text.Up.BASELINE)
                .bold()
                .clearing());
        chart.titles("leaf open by", "room before any drop; below 0 it strikes");
        return Drawing.of("Gate " + gate + ", room under the leaf", Scale.FULL, chart.marks());
    }

    /** A step as one reads it off a tape, so that seven lines are enough. */
    private static double stepFor(double span, DisplayUnits units) {
        double[] steps = units == DisplayUnits.US ? INCHES : MILLIMETRES;
        double one = units == DisplayUnits.US ? 1 : 1 / 25.4;
        for (double step : steps) if (span / (step * one) <= 7) return step * one;
        return steps[steps.length - 1] * 2 * one;
    }
}
