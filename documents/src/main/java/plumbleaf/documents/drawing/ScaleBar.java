package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

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

    /** A bar of feet or inches near a wanted length on paper. */
    public static ScaleBar nearly(Point start, double paperIn, Scale scale) {
        double[] steps = {0.5, 1, 2, 3, 6, 12, 24, 36, 60, 120, 240, 300, 600, 1200, 2400};
        double wanted = scale.real(paperIn) / 4;
        double step = steps[0];
        for (double each : steps) if (each <= wanted) step = each;
        List<String> labels = new ArrayList<>();
        for (int i = 0; i <= 4; i++)
            labels.add(
                    i % 2 == 1
                            ? ""
                            : plumbleaf.engine.quantity.LengthText.feetAndInches(i * step)
                                    .replace("' 0\"", "'")
                                    .replace("0\"", i == 0 ? "0" : "0\""));
        return new ScaleBar(start, step, labels, Look.note());
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
