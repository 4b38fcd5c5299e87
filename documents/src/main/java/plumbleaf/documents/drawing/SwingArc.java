package plumbleaf.documents.drawing;

import java.util.List;

/** How a leaf opens, in plan: from closed to open, thin, with an arrow at the open end. */
public record SwingArc(Point pin, double radius, double closedRad, double openRad, Look look) implements Mark {
    @Override
    public List<Primitive> drawn(Scale scale) {
        double turn = openRad >= closedRad ? 1 : -1;
        Arc arc = turn > 0
                ? new Arc(pin, radius, closedRad, openRad - closedRad, look)
                : new Arc(pin, radius, openRad, closedRad - openRad, look);
        Point end = pin.towards(openRad, radius);
        return List.of(
                arc,
                Stroke.line(pin, end, look.as(LineKind.PHANTOM)),
                Arrow.tip(
                        end,
                        openRad + turn * Math.PI / 2 - turn * scale.real(Arrow.LONG_IN) / radius / 2,
                        scale,
                        look));
    }
}
