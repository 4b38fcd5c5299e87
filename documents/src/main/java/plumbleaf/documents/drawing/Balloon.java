package plumbleaf.documents.drawing;

import java.util.List;

/** A number in a ring that names a part, with a line to it that ends in a dot on the part. */
public record Balloon(Point middle, Point part, String text, Look look) implements Mark {
    public static final double RADIUS_IN = 0.145;

    @Override
    public List<Primitive> drawn(Scale scale) {
        double radius = scale.real(RADIUS_IN);
        double way = middle.direction(part);
        List<Point> ring = new java.util.ArrayList<>();
        for (int i = 0; i < 24; i++) ring.add(middle.towards(i * Math.PI / 12, radius));
        return List.of(
                new Fill(ring, look.in(Ink.PAPER)),
                Stroke.line(middle.towards(way, radius), part, look),
                new Dots(List.of(part), 0.045, look),
                Arc.circle(middle, radius, look.as(LineKind.THIN)),
                Text.small(middle, text).centred().bold().with(look));
    }
}
