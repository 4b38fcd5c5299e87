package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;

/**
 * A bar of known length, so that a copy at another size can still be measured.
 *
 * @param stepReal  real inches of one field
 * @param labels    lettering at each field's end, from the zero on: one more than there are fields
 */
public record ScaleBar(Point start, double stepReal, List<String> labels, Look look) implements Mark {
    public ScaleBar {
        labels = List.copyOf(labels);
    }

    /** Lengths of one field: inches in feet and inches, millimetres below. */
    private static final List<Double> US_STEPS = List.of(
            0.5, 1.0, 2.0, 3.0, 6.0, 12.0, 24.0, 36.0, 60.0, 120.0, 240.0, 300.0, 600.0, 1200.0, 2400.0, 6e3, 12e3,
            24e3, 60e3);

    private static final List<Double> METRIC_STEPS = List.of(
            10.0, 20.0, 50.0, 100.0, 200.0, 250.0, 500.0, 1e3, 2e3, 2.5e3, 5e3, 1e4, 2e4, 5e4, 1e5, 2e5, 5e5, 1e6);

    /** A bar of feet or inches, or of meters, near a wanted length on paper. */
    public static ScaleBar nearly(Point start, double paperIn, Scale scale, DisplayUnits units) {
        double perUnit = units == DisplayUnits.US ? 1 : 1 / 25.4;
        double wanted = scale.real(paperIn) / 4;
        List<Double> steps = units == DisplayUnits.US ? US_STEPS : METRIC_STEPS;
        double step = steps.get(0);
        for (double each : steps) if (each * perUnit <= wanted) step = each;
        List<String> labels = new ArrayList<>();
        for (int i = 0; i <= 4; i++) labels.add(i % 2 == 1 ? "" : i == 0 ? "0" : end(i * step, units));
        return new ScaleBar(start, step * perUnit, labels, Look.note());
    }

    private static String end(double size, DisplayUnits units) {
        if (units == DisplayUnits.US) return LengthText.feetAndInches(size).replace("' 0\"", "'");
        return size < 1000 ? DecimalText.upTo(size, 0) + " mm" : DecimalText.upTo(size / 1000, 1) + " m";
    }

    @Override
    public List<Primitive> drawn(Scale scale) {
        double high = scale.real(0.06);
        List<Primitive> marks = new ArrayList<>();
        for (int i = 0; i + 1 < labels.size(); i++) {
            Box field = Box.of(start.plus(i * stepReal, 0), start.plus((i + 1) * stepReal, high));
            if (i % 2 == 0) marks.add(new Fill(field.corners(), look));
            marks.add(Stroke.box(field, look.as(LineKind.DIMENSION)));
        }
        for (int i = 0; i < labels.size(); i++)
            if (!labels.get(i).isEmpty())
                marks.add(Text.small(start.plus(i * stepReal, high + scale.real(0.05)), labels.get(i))
                        .anchored(Text.Across.MIDDLE, Text.Up.BASELINE)
                        .with(look));
        return List.copyOf(marks);
    }
}
