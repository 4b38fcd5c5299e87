package plumbleaf.documents.drawing;

import java.util.function.Function;

/** A picture that fills a box: the contractor's mark on a sheet. A drawing program is not given it. */
public record Raster(Emblem emblem, Box box, Look look) implements Primitive {
    @Override
    public Raster placed(double factor, double dx, double dy) {
        return new Raster(
                emblem,
                new Box(
                        box.minX() * factor + dx,
                        box.minY() * factor + dy,
                        box.maxX() * factor + dx,
                        box.maxY() * factor + dy),
                look);
    }

    @Override
    public Box extents(Scale scale) {
        return box;
    }

    @Override
    public <T> T match(
            Function<Stroke, T> stroke,
            Function<Arc, T> arc,
            Function<Fill, T> fill,
            Function<Dots, T> dots,
            Function<Text, T> text,
            Function<Raster, T> raster) {
        return raster.apply(this);
    }
}
