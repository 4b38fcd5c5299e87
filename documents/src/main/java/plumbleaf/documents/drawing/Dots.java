package plumbleaf.documents.drawing;

import java.util.List;
import java.util.function.Function;

/** Round dots of one size, as in a hatch. */
public record Dots(List<Point> places, double paperDiameterIn, Look look) implements Primitive {
    public Dots {
        places = List.copyOf(places);
        if (places.isEmpty()) throw new IllegalArgumentException("Dots need a place");
    }

    @Override
    public Dots placed(double factor, double dx, double dy) {
        return new Dots(Stroke.moved(places, factor, dx, dy), paperDiameterIn, look);
    }

    @Override
    public Box extents(Scale scale) {
        return Box.around(places);
    }

    @Override
    public <T> T match(
            Function<Stroke, T> stroke,
            Function<Arc, T> arc,
            Function<Fill, T> fill,
            Function<Dots, T> dots,
            Function<Text, T> text,
            Function<Raster, T> raster) {
        return dots.apply(this);
    }
}
