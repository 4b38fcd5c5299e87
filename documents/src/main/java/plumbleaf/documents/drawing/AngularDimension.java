package plumbleaf.documents.drawing;

import java.util.List;

/** An angle between two directions at a corner, with an arc and its lettering at the arc's middle. */
public record AngularDimension(
        Point corner, double oneRad, double otherRad, double radiusPaperIn, String text, Look look) implements Mark {
    @Override
    public List<Primitive> drawn(Scale scale) {
        double radius = scale.real(radiusPaperIn);
        Arc arc = Arc.between(corner, radius, oneRad, otherRad, look);
        double middle = arc.startRad() + arc.sweepRad() / 2;
        double half = scale.real(Lettering.width(text, Text.SMALL, Text.Weight.REGULAR) / 2);
        double out = radius + scale.real(0.09) + Math.abs(StrictMath.cos(middle)) * half;
        return List.of(
                arc,
                Arrow.tip(arc.at(1), arc.startRad() + arc.sweepRad() + Math.PI / 2, scale, look),
                Arrow.tip(arc.at(0), arc.startRad() - Math.PI / 2, scale, look),
                Text.small(corner.towards(middle, out), text)
                        .centred()
                        .clearing()
                        .with(look));
    }
}
