package plumbleaf.documents.drawing;

import java.util.List;

/** North, as an arrow half filled, with its letter. */
public record NorthArrow(Point middle, double northRad, double longPaperIn, Look look) implements Mark {
    @Override
    public List<Primitive> drawn(Scale scale) {
        double half = scale.real(longPaperIn / 2);
        Point tip = middle.towards(northRad, half);
        Point tail = middle.towards(northRad + Math.PI, half * 0.55);
        Point left = middle.towards(northRad + Math.PI * 0.82, half);
        Point right = middle.towards(northRad - Math.PI * 0.82, half);
        return List.of(
                new Fill(List.of(tip, right, tail), look),
                Stroke.outline(List.of(tip, left, tail, right), look.as(LineKind.THIN)),
                Text.medium(middle.towards(northRad, half + scale.real(0.14)), "N")
                        .centred()
                        .bold()
                        .with(look));
    }
}
