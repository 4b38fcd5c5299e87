package plumbleaf.documents.drawing;

import java.util.List;
import java.util.function.Function;

/** What a plotter translates. Places in real inches; widths, dashes and lettering heights in inches on paper. */
public sealed interface Primitive extends Mark permits Stroke, Arc, Fill, Dots, Text, Raster {
    Look look();

    /** The same, moved: each place times a factor, then shifted. */
    Primitive placed(double factor, double dx, double dy);

    /** What it covers, in real inches at a scale; line widths left out. */
    Box extents(Scale scale);

    <T> T match(
            Function<Stroke, T> stroke,
            Function<Arc, T> arc,
            Function<Fill, T> fill,
            Function<Dots, T> dots,
            Function<Text, T> text,
            Function<Raster, T> raster);

    @Override
    default List<Primitive> drawn(Scale scale) {
        return List.of(this);
    }
}
