package plumbleaf.documents.drawing;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;

/**
 * How much smaller than life a drawing is.
 *
 * @param realPerPaper real inches to one inch on paper
 * @param words        as a title block says it: {@code 1/4" = 1'-0"}
 */
public record Scale(double realPerPaper, String words) {
    public static final Scale FULL = new Scale(1, "full size");

    private static final List<Scale> US = List.of(
            FULL,
            new Scale(2, "6\" = 1'-0\""),
            new Scale(4, "3\" = 1'-0\""),
            new Scale(8, "1-1/2\" = 1'-0\""),
            new Scale(12, "1\" = 1'-0\""),
            new Scale(16, "3/4\" = 1'-0\""),
            new Scale(24, "1/2\" = 1'-0\""),
            new Scale(32, "3/8\" = 1'-0\""),
            new Scale(48, "1/4\" = 1'-0\""),
            new Scale(64, "3/16\" = 1'-0\""),
            new Scale(96, "1/8\" = 1'-0\""),
            new Scale(120, "1\" = 10'"),
            new Scale(192, "1/16\" = 1'-0\""),
            new Scale(240, "1\" = 20'"),
            new Scale(360, "1\" = 30'"),
            new Scale(480, "1\" = 40'"),
            new Scale(600, "1\" = 50'"),
            new Scale(720, "1\" = 60'"),
            new Scale(1200, "1\" = 100'"),
            new Scale(2400, "1\" = 200'"),
            new Scale(4800, "1\" = 400'"));
    /** Reduction scales of ISO 5455, and those between that shops and site plans have besides. */
    private static final List<Scale> METRIC = Stream.of(
                    1, 2, 5, 10, 20, 25, 50, 75, 100, 200, 250, 500, 1000, 2000, 5000)
            .map(Scale::ratio)
            .toList();

    private static final int MOST_HALVINGS = 10;
    private static final double INCHES_IN_A_FOOT = 12;

    public Scale {
        if (!(realPerPaper > 0 && realPerPaper < 1e7))
            throw new IllegalArgumentException("A scale is above 0, was " + DecimalText.shortest(realPerPaper));
    }

    private static List<Scale> usual(DisplayUnits units) {
        return units == DisplayUnits.US ? US : METRIC;
    }

    /** The largest usual scale at which something of this size fits the room on paper. */
    public static Scale fitting(
            DisplayUnits units, double realWidth, double realHeight, double paperWidth, double paperHeight) {
        double least = Math.max(realWidth / paperWidth, realHeight / paperHeight);
        return usual(units).stream()
                .filter(scale -> scale.realPerPaper >= least)
                .findFirst()
                .orElseGet(() -> ratio(least));
    }

    /** The same in feet and inches. */
    public static Scale fitting(double realWidth, double realHeight, double paperWidth, double paperHeight) {
        return fitting(DisplayUnits.US, realWidth, realHeight, paperWidth, paperHeight);
    }

    /** The first usual scale, from large to small, at which a drawing made for it fits a room on paper; where none does, the smallest halved until it fits. */
    public static Drawing fitted(
            DisplayUnits units, Function<Scale, Drawing> draw, double paperWidth, double paperHeight) {
        List<Scale> scales = usual(units);
        Drawing drawing = draw.apply(scales.get(1));
        for (Scale scale : scales.subList(1, scales.size())) {
            drawing = draw.apply(scale);
            if (fits(drawing, paperWidth, paperHeight)) return drawing;
        }
        double per = scales.get(scales.size() - 1).realPerPaper;
        for (int halvings = 0; halvings < MOST_HALVINGS && !fits(drawing, paperWidth, paperHeight); halvings++) {
            per *= 2;
            String feet = "1\" = " + DecimalText.whole(per / INCHES_IN_A_FOOT) + "'";
            drawing = draw.apply(units == DisplayUnits.US ? new Scale(per, feet) : ratio(per));
        }
        return drawing;
    }

    private static boolean fits(Drawing drawing, double paperWidth, double paperHeight) {
        return drawing.paperWidthIn() <= paperWidth && drawing.paperHeightIn() <= paperHeight;
    }

    /** Any other scale, named by its ratio. */
    public static Scale ratio(double realPerPaper) {
        return new Scale(realPerPaper, "1:" + DecimalText.upTo(realPerPaper, 1));
    }

    /** Real inches that take up so many inches on paper. */
    public double real(double paperIn) {
        return paperIn * realPerPaper;
    }

    public double paper(double realIn) {
        return realIn / realPerPaper;
    }
}
