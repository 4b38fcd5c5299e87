package plumbleaf.documents.drawing;

import java.util.List;
import java.util.function.Function;

/**
 * One line of lettering.
 *
 * @param at          where it is anchored
 * @param heightIn    height of a capital letter on paper
 * @param rotationRad turned anticlockwise about the anchor
 * @param clear       whether the ground behind is cleared, so that lines break for it
 */
public record Text(
        Point at,
        String text,
        double heightIn,
        Across across,
        Up up,
        double rotationRad,
        Weight weight,
        boolean clear,
        Look look)
        implements Primitive {
    /** Smallest lettering on any paper: 3/32 in., readable at arm's length. */
    public static final double SMALL = 3.0 / 32;

    public static final double MEDIUM = 1.0 / 8;
    public static final double LARGE = 3.0 / 16;

    /** Which part of the width the anchor is at. */
    public enum Across {
        START,
        MIDDLE,
        END
    }

    /** Which part of the height the anchor is at. */
    public enum Up {
        BASELINE,
        MIDDLE,
        TOP
    }

    /** Two weights are all a page needs. */
    public enum Weight {
        REGULAR,
        SEMIBOLD
    }

    public Text {
        if (!(heightIn > 0 && heightIn < 1e4)) throw new IllegalArgumentException("Lettering needs a height");
    }

    public static Text small(Point at, String text) {
        return new Text(at, text, SMALL, Across.START, Up.BASELINE, 0, Weight.REGULAR, false, Look.note());
    }

    public static Text medium(Point at, String text) {
        return small(at, text).high(MEDIUM);
    }

    public Text high(double paperIn) {
        return new Text(at, text, paperIn, across, up, rotationRad, weight, clear, look);
    }

    public Text anchored(Across newAcross, Up newUp) {
        return new Text(at, text, heightIn, newAcross, newUp, rotationRad, weight, clear, look);
    }

    public Text centred() {
        return anchored(Across.MIDDLE, Up.MIDDLE);
    }

    public Text turned(double rad) {
        return new Text(at, text, heightIn, across, up, rad, weight, clear, look);
    }

    public Text bold() {
        return new Text(at, text, heightIn, across, up, rotationRad, Weight.SEMIBOLD, clear, look);
    }

    public Text clearing() {
        return new Text(at, text, heightIn, across, up, rotationRad, weight, true, look);
    }

    public Text with(Look newLook) {
        return new Text(at, text, heightIn, across, up, rotationRad, weight, clear, newLook);
    }

    public Text of(String id) {
        return with(look.of(id));
    }

    /** Width on paper. */
    public double widthIn() {
        return Lettering.width(text, heightIn, weight);
    }

    /** Where the first letter's baseline starts. */
    public Point start(Scale scale) {
        double width = scale.real(widthIn());
        double high = scale.real(heightIn);
        double dx = across == Across.START ? 0 : across == Across.MIDDLE ? -width / 2 : -width;
        double dy = up == Up.BASELINE ? 0 : up == Up.MIDDLE ? -high / 2 : -high;
        return at.plus(dx, dy).rotatedAbout(at, rotationRad);
    }

    /** The corners round the letters, from the first letter's foot on. */
    public List<Point> corners(Scale scale) {
        Point start = start(scale);
        double width = scale.real(widthIn());
        double top = scale.real(heightIn * Lettering.ASCENT);
        double foot = -scale.real(heightIn * Lettering.DESCENT);
        return List.of(start.plus(0, foot), start.plus(width, foot), start.plus(width, top), start.plus(0, top))
                .stream()
                .map(corner -> corner.rotatedAbout(start, rotationRad))
                .toList();
    }

    @Override
    public Text placed(double factor, double dx, double dy) {
        Point moved = new Point(at.x() * factor + dx, at.y() * factor + dy);
        return new Text(moved, text, heightIn, across, up, rotationRad, weight, clear, look);
    }

    @Override
    public Box extents(Scale scale) {
        return Box.around(corners(scale));
    }

    @Override
    public <T> T match(
            Function<Stroke, T> stroke,
            Function<Arc, T> arc,
            Function<Fill, T> fill,
            Function<Dots, T> dots,
            Function<Text, T> textCase,
            Function<Raster, T> raster) {
        return textCase.apply(this);
    }
}
