package plumbleaf.documents.drawing;

import java.util.List;
import java.util.function.Function;

/** A filled outline without edge. */
public record Fill(List<Point> outline, Look look) implements Primitive {
    public Fill {
        outline = List.copyOf(outline);
        if (outline.size() < 3) throw new IllegalArgumentException("A fill needs three points, had " + outline.size());
    }

    public static Fill of(List<Point> outline, Layer layer, Ink ink) {
        return new Fill(outline, new Look(layer, LineKind.THIN, ink, ""));
    }

    @Override
    public Fill placed(double factor, double dx, double dy) {
        return new Fill(Stroke.moved(outline, factor, dx, dy), look);
    }

    @Override
    public Box extents(Scale scale) {
        return Box.around(outline);
    }

    @Override
    public <T> T match(
            Function<Stroke, T> stroke,
            Function<Arc, T> arc,
            Function<Fill, T> fill,
            Function<Dots, T> dots,
            Function<Text, T> text,
            Function<Raster, T> raster) {
        return fill.apply(this);
    }
}
