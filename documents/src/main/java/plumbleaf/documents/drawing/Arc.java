package plumbleaf.documents.drawing;

import java.util.function.Function;
import plumbleaf.engine.quantity.DecimalText;

/**
 * A part of a circle, or all of it.
 *
 * @param startRad where it begins, anticlockwise from the right
 * @param sweepRad how far it runs anticlockwise, above 0, at most a full turn
 */
public record Arc(Point centre, double radius, double startRad, double sweepRad, Look look) implements Primitive {
    private static final double TURN = 2 * Math.PI;

    public Arc {
        if (!(radius > 0 && sweepRad > 0 && sweepRad <= TURN + 1e-9))
            throw new IllegalArgumentException("An arc has a radius above 0 and a sweep of 0 to a turn, were "
                    + DecimalText.shortest(radius) + ", " + DecimalText.shortest(sweepRad));
    }

    public static Arc circle(Point centre, double radius, Look look) {
        return new Arc(centre, radius, 0, TURN, look);
    }

    /** The shorter way round between two directions. */
    public static Arc between(Point centre, double radius, double oneRad, double otherRad, Look look) {
        double turn = otherRad - oneRad;
        while (turn > Math.PI) turn -= TURN;
        while (turn <= -Math.PI) turn += TURN;
        return turn >= 0
                ? new Arc(centre, radius, oneRad, Math.max(turn, 1e-9), look)
                : new Arc(centre, radius, oneRad + turn, -turn, look);
    }

    public boolean isCircle() {
        return sweepRad >= TURN - 1e-9;
    }

    public Point at(double share) {
        return centre.towards(startRad + share * sweepRad, radius);
    }

    @Override
    public Arc placed(double factor, double dx, double dy) {
        return new Arc(
                new Point(centre.x() * factor + dx, centre.y() * factor + dy),
                radius * factor,
                startRad,
                sweepRad,
                look);
    }

    @Override
    public Box extents(Scale scale) {
        Box box = Box.of(at(0), at(1));
        double quarter = Math.PI / 2;
        double first = Math.ceil(startRad / quarter);
        for (double k = first; k * quarter <= startRad + sweepRad; k++)
            box = box.with(centre.towards(k * quarter, radius));
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
        return arc.apply(this);
    }
}
